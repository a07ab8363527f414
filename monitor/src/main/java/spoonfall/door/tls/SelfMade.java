package spoonfall.door.tls;

import java.io.IOException;
import java.io.StringWriter;
import java.math.BigInteger;
import java.net.InetAddress;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.security.GeneralSecurityException;
import java.security.KeyPair;
import java.security.KeyPairGenerator;
import java.security.SecureRandom;
import java.security.spec.ECGenParameterSpec;
import java.time.Duration;
import java.time.Instant;
import java.util.ArrayList;
import java.util.Collection;
import java.util.Date;
import java.util.List;
import org.bouncycastle.asn1.x500.X500Name;
import org.bouncycastle.asn1.x509.BasicConstraints;
import org.bouncycastle.asn1.x509.ExtendedKeyUsage;
import org.bouncycastle.asn1.x509.Extension;
import org.bouncycastle.asn1.x509.GeneralName;
import org.bouncycastle.asn1.x509.GeneralNames;
import org.bouncycastle.asn1.x509.KeyPurposeId;
import org.bouncycastle.asn1.x509.KeyUsage;
import org.bouncycastle.cert.jcajce.JcaX509CertificateConverter;
import org.bouncycastle.cert.jcajce.JcaX509v3CertificateBuilder;
import org.bouncycastle.openssl.jcajce.JcaPEMWriter;
import org.bouncycastle.openssl.jcajce.JcaPKCS8Generator;
import org.bouncycastle.operator.OperatorCreationException;
import org.bouncycastle.operator.jcajce.JcaContentSignerBuilder;
import spoonfall.door.PrivateFile;

/** A certificate that this machine makes for itself. Nobody vouches for it: people compare its fingerprint. */
public final class SelfMade {
    /** How long one holds: what browsers allow at most (398 days, from memory), less a day. */
    static final Duration LIFE = Duration.ofDays(397);

    /** One that ends sooner than this is made anew. */
    static final Duration ENOUGH = Duration.ofDays(30);

    private SelfMade() {}

    /**
     * The one in the data folder, or a new one kept there in files that only their owner may read. It is kept as long as it holds, so that
     * devices that know it need not ask again.
     *
     * @param names the host names of this machine
     * @param addresses its addresses
     * @throws IllegalArgumentException if it cannot be written down
     */
    public static ServerKey in(Path folder, Collection<String> names, Collection<InetAddress> addresses, Instant now) {
        Path certificate = folder.resolve("door-certificate.pem");
        Path key = folder.resolve("door-key.pem");
        if (Files.exists(certificate) && Files.exists(key)) {
            try {
                ServerKey kept = PemFiles.read(certificate, key);
                if (kept.certificate().getNotAfter().toInstant().isAfter(now.plus(ENOUGH))) {
                    return kept;
                }
            } catch (IllegalArgumentException e) {
                // ours, and of no use any more: a new one takes its place
            }
        }
        ServerKey made = make(names, addresses, now);
        try {
            PrivateFile.write(key, pem(new JcaPKCS8Generator(made.key(), null)));
            PrivateFile.write(certificate, pem(made.certificate()));
        } catch (IOException e) {
            throw new IllegalArgumentException(
                    "the certificate cannot be kept in " + folder + ": " + e.getMessage(), e);
        }
        return made;
    }

    private static ServerKey make(Collection<String> names, Collection<InetAddress> addresses, Instant now) {
        try {
            KeyPairGenerator generator = KeyPairGenerator.getInstance("EC");
            generator.initialize(new ECGenParameterSpec("secp256r1"));
            KeyPair pair = generator.generateKeyPair();
            X500Name self = new X500Name("CN=Spoonfall");
            JcaX509v3CertificateBuilder builder = new JcaX509v3CertificateBuilder(
                    self,
                    new BigInteger(120, new SecureRandom()).add(BigInteger.ONE),
                    Date.from(now.minus(Duration.ofHours(1))),
                    Date.from(now.plus(LIFE)),
                    self,
                    pair.getPublic());
            builder.addExtension(Extension.basicConstraints, true, new BasicConstraints(false))
                    .addExtension(Extension.keyUsage, true, new KeyUsage(KeyUsage.digitalSignature))
                    .addExtension(
                            Extension.extendedKeyUsage, false, new ExtendedKeyUsage(KeyPurposeId.id_kp_serverAuth))
                    .addExtension(Extension.subjectAlternativeName, false, alternatives(names, addresses));
            return new ServerKey(
                    List.of(new JcaX509CertificateConverter()
                            .getCertificate(builder.build(
                                    new JcaContentSignerBuilder("SHA256withECDSA").build(pair.getPrivate())))),
                    pair.getPrivate());
        } catch (GeneralSecurityException | OperatorCreationException | IOException e) {
            throw new IllegalStateException("this Java cannot make a certificate: " + e.getMessage(), e);
        }
    }

    private static GeneralNames alternatives(Collection<String> names, Collection<InetAddress> addresses) {
        List<GeneralName> all = new ArrayList<>();
        all.add(new GeneralName(GeneralName.dNSName, "localhost"));
        names.stream()
                .filter(name -> name.matches("[a-z0-9.-]*[a-z][a-z0-9.-]*"))
                .forEach(name -> all.add(new GeneralName(GeneralName.dNSName, name)));
        addresses.forEach(address -> all.add(new GeneralName(GeneralName.iPAddress, address.getHostAddress())));
        return new GeneralNames(all.toArray(GeneralName[]::new));
    }

    private static byte[] pem(Object part) throws IOException {
        StringWriter text = new StringWriter();
        try (JcaPEMWriter writer = new JcaPEMWriter(text)) {
            writer.writeObject(part);
        }
        return text.toString().getBytes(StandardCharsets.US_ASCII);
    }
}
