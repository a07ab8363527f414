package spoonfall.web.door;

import java.net.InetSocketAddress;
import java.util.Map;
import java.util.WeakHashMap;
import java.util.concurrent.TimeUnit;
import org.eclipse.jetty.io.Connection;
import org.eclipse.jetty.io.EndPoint;
import org.eclipse.jetty.io.ssl.SslConnection;
import org.eclipse.jetty.server.NegotiatingServerConnection;
import org.eclipse.jetty.server.ServerConnector;
import org.eclipse.jetty.server.internal.HttpConnection;
import org.eclipse.jetty.util.component.AbstractLifeCycle;
import org.slf4j.Logger;
import org.slf4j.LoggerFactory;
import spoonfall.door.Clients;

/**
 * Bounds what the network may hold open: so many connections of one client and of all, and so long to say what it wants. A connection
 * that drips its request a byte at a time is cut; one that is silent ends by the connector's idle time.
 */
final class ConnectionWatch extends AbstractLifeCycle implements Connection.Listener {
    private static final Logger LOG = LoggerFactory.getLogger(ConnectionWatch.class);
    private static final int MOST = 1000;
    private static final int MOST_OF_ONE = 64;
    private static final long SWEEP_S = 1;
    private static final long SLOWEST_REQUEST_NANOS = TimeUnit.SECONDS.toNanos(5);

    private final ServerConnector connector;
    private final Runnable alongside;
    private final Map<EndPoint, Begun> begun = new WeakHashMap<>();

    /** After how many whole messages a connection began another one, and when that was seen. */
    private record Begun(long messages, long bytesBefore, long sinceNanos) {}

    /**
     * A watch on the connections of a connector.
     *
     * @param alongside is done every second as well
     */
    ConnectionWatch(ServerConnector connector, Runnable alongside) {
        this.connector = connector;
        this.alongside = alongside;
    }

    @Override
    protected void doStart() {
        later();
    }

    private void later() {
        connector.getScheduler().schedule(this::sweep, SWEEP_S, TimeUnit.SECONDS);
    }

    @Override
    public void onOpened(Connection connection) {
        EndPoint mine = connection.getEndPoint();
        if (!connector.getConnectedEndPoints().contains(mine)) {
            return; // what runs within a connection that was counted already
        }
        String client = client(mine);
        long sameClient = connector.getConnectedEndPoints().stream()
                .filter(other -> client(other).equals(client))
                .count();
        if (sameClient > MOST_OF_ONE || connector.getConnectedEndPoints().size() > MOST) {
            mine.close();
        }
    }

    private void sweep() {
        if (!isRunning()) {
            return;
        }
        try {
            long nowNanos = System.nanoTime();
            connector.getConnectedEndPoints().forEach(each -> judge(each, nowNanos));
            alongside.run();
        } catch (RuntimeException e) {
            LOG.warn("the connections could not be looked through: {}", e.toString());
        }
        later();
    }

    private void judge(EndPoint endPoint, long nowNanos) {
        Connection outer = endPoint.getConnection();
        Connection connection =
                outer instanceof SslConnection tls ? tls.getSslEndPoint().getConnection() : outer;
        if (!(connection instanceof HttpConnection || connection instanceof NegotiatingServerConnection)) {
            begun.remove(endPoint); // a live channel, or HTTP/2, which has limits of its own
            return;
        }
        long messages = connection.getMessagesIn();
        long bytes = outer.getBytesIn();
        Begun before = begun.get(endPoint);
        if (before == null || before.messages() != messages) {
            begun.put(endPoint, new Begun(messages, messages == 0 ? 0 : bytes, nowNanos));
        } else if (bytes == before.bytesBefore()) {
            begun.put(endPoint, new Begun(messages, bytes, nowNanos));
        } else if (nowNanos - before.sinceNanos() > SLOWEST_REQUEST_NANOS) {
            begun.remove(endPoint);
            endPoint.close();
        }
    }

    private static String client(EndPoint endPoint) {
        return endPoint.getRemoteSocketAddress() instanceof InetSocketAddress address && address.getAddress() != null
                ? Clients.named(address.getAddress().getHostAddress())
                : "";
    }
}
