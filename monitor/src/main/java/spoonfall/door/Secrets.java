package spoonfall.door;

import java.nio.charset.StandardCharsets;
import java.security.MessageDigest;
import java.security.NoSuchAlgorithmException;
import java.security.SecureRandom;
import java.util.Base64;
import java.util.HexFormat;

/** Makes and compares what must not be guessed. */
final class Secrets {
    /** Letters and digits of which none is taken for another, in print or said aloud. */
    static final String ALPHABET = "23456789ABCDEFGHJKMNPQRSTVWXYZ";

    private static final String ID_LETTERS = "abcdefghjkmnpqrstuvwxyz23456789";
    private static final int TOKEN_BYTES = 32;
    private static final int ID_LENGTH = 6;

    private final SecureRandom random = new SecureRandom();

    /** A token: 256 bits. */
    String token() {
        byte[] bytes = new byte[TOKEN_BYTES];
        random.nextBytes(bytes);
        return Base64.getUrlEncoder().withoutPadding().encodeToString(bytes);
    }

    /** What a device is called; no secret. */
    String id() {
        return letters(ID_LETTERS, ID_LENGTH);
    }

    /** So many letters of the alphabet, each as likely as any other. */
    String code(int length) {
        return letters(ALPHABET, length);
    }

    private String letters(String from, int length) {
        StringBuilder text = new StringBuilder(length);
        for (int i = 0; i < length; i++) {
            text.append(from.charAt(random.nextInt(from.length())));
        }
        return text.toString();
    }

    /** The SHA-256 of a text in hexadecimal digits. */
    static String hash(String secret) {
        try {
            byte[] digest = MessageDigest.getInstance("SHA-256").digest(secret.getBytes(StandardCharsets.UTF_8));
            return HexFormat.of().formatHex(digest);
        } catch (NoSuchAlgorithmException e) {
            throw new IllegalStateException("every Java has SHA-256", e);
        }
    }

    /** Whether two hashes are the same, in a time that does not tell how much of them is. */
    static boolean same(String hash, String other) {
        return MessageDigest.isEqual(
                hash.getBytes(StandardCharsets.US_ASCII), other.getBytes(StandardCharsets.US_ASCII));
    }
}
