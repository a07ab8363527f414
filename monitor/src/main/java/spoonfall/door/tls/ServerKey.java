package spoonfall.door.tls;

import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.security.GeneralSecurityException;
import java.security.KeyStore;
import java.security.MessageDigest;
import java.security.PrivateKey;
import java.security.Signature;
import java.security.cert.Certificate;
import java.security.cert.X509Certificate;
import java.util.HexFormat;
import java.util.List;

/**
 * A private key with its certificate.
 *
 * @param chain the certificate, then those that vouch for it
 * @param key the key of the first
 */
public record ServerKey(List<X509Certificate> chain, PrivateKey key) {
    private static final String ALIAS = "spoonfall";

    /** Refuses a key that is not the certificate's. */
    public ServerKey {
        chain = List.copyOf(chain);
        if (chain.isEmpty()) {
            throw new IllegalArgumentException("there is no certificate");
        }
        if (!belongs(chain.get(0), key)) {
            throw new IllegalArgumentException("the key is not that of the certificate");
        }
    }

    /** The certificate that pages are shown. */
    public X509Certificate certificate() {
        return chain.get(0);
    }

    /** The SHA-256 of the certificate as browsers show it: pairs of digits with colons between. */
    public String fingerprint() {
        try {
            byte[] digest =
                    MessageDigest.getInstance("SHA-256").digest(certificate().getEncoded());
            return HexFormat.ofDelimiter(":").withUpperCase().formatHex(digest);
        } catch (GeneralSecurityException e) {
            throw new IllegalStateException("the certificate cannot be written out", e);
        }
    }

    /**
     * Both in a store in memory.
     *
     * @param password locks it; it never leaves this process
     */
    public KeyStore store(char[] password) {
        try {
            KeyStore store = KeyStore.getInstance("PKCS12");
            store.load(null, password);
            store.setKeyEntry(ALIAS, key, password, chain.toArray(Certificate[]::new));
            return store;
        } catch (GeneralSecurityException | IOException e) {
            throw new IllegalStateException("the certificate and its key cannot be used: " + e.getMessage(), e);
        }
    }

    /** Without the key, which must not get into a log. */
    @Override
    public String toString() {
        return "the certificate " + fingerprint();
    }

    /** Whether what the key signs, the certificate confirms. */
    private static boolean belongs(X509Certificate certificate, PrivateKey key) {
        String kind = key.getAlgorithm();
        try {
            Signature signature = Signature.getInstance(
                    switch (kind) {
                        case "EC" -> "SHA256withECDSA";
                        case "RSA" -> "SHA256withRSA";
                        default -> kind;
                    });
            byte[] words = ALIAS.getBytes(StandardCharsets.US_ASCII);
            signature.initSign(key);
            signature.update(words);
            byte[] signed = signature.sign();
            signature.initVerify(certificate.getPublicKey());
            signature.update(words);
            return signature.verify(signed);
        } catch (GeneralSecurityException e) {
            return false;
        }
    }
}
