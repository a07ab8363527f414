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
 * Bounds what the network may hold open: so many connections of one client and of all, so long to say what it wants, and how slowly what
 * goes with it may come. A connection that drips its request a byte at a time is cut; one that is silent ends by the connector's idle time.
 */
final class ConnectionWatch extends AbstractLifeCycle implements Connection.Listener {
    private static final Logger LOG = LoggerFactory.getLogger(ConnectionWatch.class);
    private static final int MOST = 1000;
    private static final int MOST_OF_ONE = 64;
    private static final long SWEEP_S = 1;
    private static final long SLOWEST_HEAD_NANOS = TimeUnit.SECONDS.toNanos(5);

    /** A photo may take minutes over a poor network: of a body so much must come in so long, 8 KiB a second. */
    private static final long BODY_NANOS = TimeUnit.SECONDS.toNanos(10);

    private static final long LEAST_OF_BODY_BYTES = 80 * 1024;

    private final ServerConnector connector;
    private final Runnable alongside;
    private final Map<EndPoint, Begun> begun = new WeakHashMap<>();
    private String trouble = "";

    /**
     * What a connection is saying, and since when that was seen.
     *
     * @param heads how many requests said what they want before
     * @param body whether what goes with the last one is still coming
     * @param bytesBefore how many bytes had come then
     */
    private record Begun(long heads, boolean body, long bytesBefore, long sinceNanos) {
        boolean isOf(long nowHeads, boolean nowBody) {
            return heads == nowHeads && body == nowBody;
        }

        boolean timeIsUp(long nowNanos) {
            return nowNanos - sinceNanos > (body ? BODY_NANOS : SLOWEST_HEAD_NANOS);
        }

        boolean broughtEnough(long bytes) {
            return body && bytes - bytesBefore >= LEAST_OF_BODY_BYTES;
        }
    }

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
            trouble = "";
        } catch (RuntimeException e) {
            warn(e);
        }
        later();
    }

    /** What goes wrong every second is said once. */
    private void warn(RuntimeException e) {
        if (!e.toString().equals(trouble)) {
            LOG.warn("the connections could not be looked through: {}", e.toString(), e);
        }
        trouble = e.toString();
    }

    private void judge(EndPoint endPoint, long nowNanos) {
        Connection outer = endPoint.getConnection();
        Connection connection =
                outer instanceof SslConnection tls ? tls.getSslEndPoint().getConnection() : outer;
        if (!(connection instanceof HttpConnection || connection instanceof NegotiatingServerConnection)) {
            begun.remove(endPoint); // a live channel, or HTTP/2, which has limits of its own
            return;
        }
        long heads = connection.getMessagesIn();
        boolean body =
                connection instanceof HttpConnection http && http.getParser().inContentState();
        long bytes = outer.getBytesIn();
        Begun before = begun.get(endPoint);
        if (before == null || !before.isOf(heads, body)) {
            begun.put(endPoint, new Begun(heads, body, heads == 0 ? 0 : bytes, nowNanos));
        } else if (bytes == before.bytesBefore() || (before.timeIsUp(nowNanos) && before.broughtEnough(bytes))) {
            begun.put(endPoint, new Begun(heads, body, bytes, nowNanos));
        } else if (before.timeIsUp(nowNanos)) {
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
