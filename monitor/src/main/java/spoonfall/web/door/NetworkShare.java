package spoonfall.web.door;

import org.eclipse.jetty.server.Handler;
import org.eclipse.jetty.server.Request;
import org.eclipse.jetty.server.Response;
import org.eclipse.jetty.server.handler.EagerContentHandler;
import org.eclipse.jetty.server.handler.EagerContentHandler.RetainedContentLoaderFactory;
import org.eclipse.jetty.server.handler.SizeLimitHandler;
import org.eclipse.jetty.server.handler.ThreadLimitHandler;
import org.eclipse.jetty.util.Callback;
import spoonfall.web.book.PhotoRoutes;
import spoonfall.web.wire.Asked;

/**
 * What the network gets of the service's threads. Bodies are taken in before a thread is given to them, and requests from the network share
 * a part of the threads: one that sends or reads its last byte tomorrow holds up its like, never this machine's page.
 */
final class NetworkShare {
    private static final int MOST_THREADS = 10;
    private static final int OVERHEAD_BYTES = 64;

    private NetworkShare() {}

    /** Handlers that go before all others: requests from the network are held to their share. */
    static Handler.Singleton handlers() {
        ThreadLimitHandler threads = new OneShare();
        threads.setThreadLimit(MOST_THREADS);
        threads.include(NetworkShare::isNetwork);
        EagerContentHandler bodies = new EagerContentHandler(
                threads, new RetainedContentLoaderFactory(Asked.LARGEST_BYTES + 1L, OVERHEAD_BYTES, false));
        bodies.include(NetworkShare::isNetwork);
        SizeLimitHandler sizes = new Sizes();
        sizes.setHandler(bodies);
        return sizes;
    }

    private static boolean isNetwork(Request request) {
        return Listeners.NETWORK.equals(
                request.getConnectionMetaData().getConnector().getName());
    }

    /** A photo is let through to the door, which knows who sent it before a byte of it is read. */
    private static final class Sizes extends SizeLimitHandler {
        Sizes() {
            super(Asked.LARGEST_BYTES, -1);
        }

        @Override
        public boolean handle(Request request, Response response, Callback callback) throws Exception {
            int most = PhotoRoutes.mostBytes(request.getMethod(), Request.getPathInContext(request));
            return most > Asked.LARGEST_BYTES
                    ? getHandler().handle(request, response, callback)
                    : super.handle(request, response, callback);
        }
    }

    /** All of the network is one client here: addresses cost an attacker nothing. */
    private static final class OneShare extends ThreadLimitHandler {
        @Override
        protected String getRemoteIP(Request request) {
            return Listeners.NETWORK;
        }
    }
}
