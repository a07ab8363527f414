package spoonfall.web.door;

import io.javalin.config.JettyConfig;
import java.security.SecureRandom;
import java.util.Base64;
import java.util.Optional;
import org.eclipse.jetty.alpn.server.ALPNServerConnectionFactory;
import org.eclipse.jetty.http2.server.HTTP2ServerConnectionFactory;
import org.eclipse.jetty.server.Connector;
import org.eclipse.jetty.server.HttpConfiguration;
import org.eclipse.jetty.server.HttpConnectionFactory;
import org.eclipse.jetty.server.SecureRequestCustomizer;
import org.eclipse.jetty.server.Server;
import org.eclipse.jetty.server.ServerConnector;
import org.eclipse.jetty.server.SslConnectionFactory;
import org.eclipse.jetty.util.ssl.SslContextFactory;
import spoonfall.door.tls.ServerKey;

/**
 * What listens: one connector for this machine alone, and one for the network if it is let in, with limits of its own.
 * Whatever the network does, this machine's page has its own line.
 */
public final class Listeners {
    /** The name of the connector that listens to the network. */
    static final String NETWORK = "network";

    /** How long a page may still say nothing when the service stops, before its connection ends. */
    private static final int LAST_IDLE_MILLIS = 100;

    private static final int MOST_STREAMS = 64;

    /** How long a stream that nothing passes on may hold what answers it. */
    private static final int LONGEST_STILL_MILLIS = 10_000;

    /** So little may the system hold for a page that does not read it: the rest waits with us, where it is noticed and bounded. */
    private static final int SEND_BUFFER_BYTES = 64 * 1024;

    /**
     * So many connections may wait to be taken in, as far as the system lets them. Whoever comes when the queue is full is not heard, and
     * asks again after one second, then three: with Java's fifty, of a thousand pages that come at once most would.
     */
    private static final int MOST_AT_THE_DOOR = 1024;

    private Listeners() {}

    /** Adds the one for this machine, and the other if there is a door to the network. */
    public static void add(JettyConfig jetty, String host, int port, Optional<NetworkDoor> network) {
        jetty.addConnector((server, http) -> local(server, http, host, port));
        network.ifPresent(door -> {
            jetty.addConnector((server, http) -> outside(server, http, door));
            jetty.modifyServer(server -> server.setHandler(NetworkShare.handlers()));
        });
    }

    /** The port that the network sees, once both listen. */
    public static int networkPort(Server server) {
        for (Connector connector : server.getConnectors()) {
            if (NETWORK.equals(connector.getName()) && connector instanceof ServerConnector found) {
                return found.getLocalPort();
            }
        }
        throw new IllegalStateException("nothing listens to the network");
    }

    private static ServerConnector local(Server server, HttpConfiguration http, String host, int port) {
        ServerConnector connector = new ServerConnector(server, new HttpConnectionFactory(http));
        connector.setHost(host);
        connector.setPort(port);
        limit(connector);
        return connector;
    }

    @SuppressWarnings("removal") // nothing else of this version of Jetty ends a body that trickles in
    private static ServerConnector outside(Server server, HttpConfiguration base, NetworkDoor door) {
        HttpConfiguration http = new HttpConfiguration(base);
        http.setHeaderCacheCaseSensitive(
                true); // else a token in other letters is taken for the one before it on the same line
        ServerConnector connector =
                door.tls().map(key -> secure(server, http, key)).orElseGet(() -> plain(server, http));
        connector.setPort(door.port());
        connector.setName(NETWORK);
        limit(connector);
        ConnectionWatch watch = new ConnectionWatch(connector, door.devices()::refresh);
        connector.addBean(watch);
        return connector;
    }

    private static void limit(ServerConnector connector) {
        connector.setAcceptQueueSize(MOST_AT_THE_DOOR);
        connector.setAcceptedSendBufferSize(SEND_BUFFER_BYTES);
        connector.setShutdownIdleTimeout(LAST_IDLE_MILLIS);
    }

    private static ServerConnector plain(Server server, HttpConfiguration http) {
        return new ServerConnector(server, new HttpConnectionFactory(http));
    }

    private static ServerConnector secure(Server server, HttpConfiguration http, ServerKey key) {
        // Our own door checks the host, and says in words what is wrong.
        http.addCustomizer(new SecureRequestCustomizer(false));
        HttpConnectionFactory http1 = new HttpConnectionFactory(http);
        HTTP2ServerConnectionFactory http2 = new HTTP2ServerConnectionFactory(http);
        http2.setConnectProtocolEnabled(false); // the live channel comes by HTTP/1.1
        http2.setMaxConcurrentStreams(MOST_STREAMS);
        http2.setStreamIdleTimeout(LONGEST_STILL_MILLIS);
        ALPNServerConnectionFactory alpn = new ALPNServerConnectionFactory();
        alpn.setDefaultProtocol(http1.getProtocol());
        SslConnectionFactory tls = new SslConnectionFactory(context(key), alpn.getProtocol());
        return new ServerConnector(server, tls, alpn, http2, http1);
    }

    private static SslContextFactory.Server context(ServerKey key) {
        byte[] random = new byte[24];
        new SecureRandom().nextBytes(random);
        String password = Base64.getEncoder().encodeToString(random);
        SslContextFactory.Server context = new SslContextFactory.Server();
        context.setKeyStore(key.store(password.toCharArray()));
        context.setKeyStorePassword(password);
        context.setSniRequired(false);
        context.setIncludeProtocols("TLSv1.3", "TLSv1.2");
        return context;
    }
}
