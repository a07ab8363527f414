package spoonfall.photo;

/** A file is no photo that can be kept; the message says why, and the way out. */
public final class PhotoException extends Exception {
    private static final long serialVersionUID = 1L;

    PhotoException(String message) {
        super(message);
    }

    PhotoException(String message, Throwable cause) {
        super(message, cause);
    }
}
