package spoonfall.web;

import java.io.IOException;
import java.net.http.HttpClient;
import java.security.GeneralSecurityException;
import java.security.KeyStore;
import java.security.cert.X509Certificate;
import javax.net.ssl.SSLContext;
import javax.net.ssl.TrustManagerFactory;

/** Clients that trust one certificate, as a device does after its owner compared the fingerprint. */
final class Trusting {
    private Trusting() {}

    static HttpClient client(X509Certificate certificate) {
        try {
            KeyStore store = KeyStore.getInstance("PKCS12");
            store.load(null, null);
            store.setCertificateEntry("kitchen", certificate);
            TrustManagerFactory trust = TrustManagerFactory.getInstance(TrustManagerFactory.getDefaultAlgorithm());
            trust.init(store);
            SSLContext context = SSLContext.getInstance("TLS");
            context.init(null, trust.getTrustManagers(), null);
            return HttpClient.newBuilder().sslContext(context).build();
        } catch (GeneralSecurityException | IOException e) {
            throw new AssertionError(e);
        }
    }
}
