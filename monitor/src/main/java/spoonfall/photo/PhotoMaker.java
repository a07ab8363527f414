package spoonfall.photo;

import java.awt.Color;
import java.awt.Graphics2D;
import java.awt.RenderingHints;
import java.awt.geom.AffineTransform;
import java.awt.image.BufferedImage;
import java.io.ByteArrayInputStream;
import java.io.ByteArrayOutputStream;
import java.io.IOException;
import java.security.MessageDigest;
import java.security.NoSuchAlgorithmException;
import java.util.HexFormat;
import java.util.Iterator;
import javax.imageio.IIOImage;
import javax.imageio.ImageIO;
import javax.imageio.ImageReadParam;
import javax.imageio.ImageReader;
import javax.imageio.ImageWriteParam;
import javax.imageio.ImageWriter;
import javax.imageio.stream.MemoryCacheImageInputStream;
import javax.imageio.stream.MemoryCacheImageOutputStream;

/**
 * Makes photos anew. One at a time, for each takes memory; a large one is read in steps of several pixels, so that it never lies in
 * memory whole.
 */
public final class PhotoMaker {
    /** A file has at most so many bytes. */
    public static final int MOST_BYTES = 12 * 1024 * 1024;

    /** What is said of a larger one. */
    public static final String TOO_LARGE = "a photo has at most 12 MB; make it smaller";

    /** A photo that was made anew has at most so many pixels a side. */
    public static final int LONGEST_SIDE = 1600;

    private static final long MOST_PIXELS = 60_000_000L;
    private static final int LONGEST_SIDE_IN = 20_000;
    private static final float QUALITY = 0.85f;

    /** The orientations of Exif from here on swap width and height. */
    private static final int FIRST_TURNED = 5;

    /** What somebody sent, made anew; a {@link PhotoException} says why it cannot be. */
    public synchronized Photo remade(byte[] file) throws PhotoException {
        if (file.length > MOST_BYTES) {
            throw new PhotoException(TOO_LARGE);
        }
        PhotoHeader header = PhotoHeader.of(file);
        boolean sides = header.width() > 0
                && header.height() > 0
                && header.width() <= LONGEST_SIDE_IN
                && header.height() <= LONGEST_SIDE_IN;
        if (!sides || (long) header.width() * header.height() > MOST_PIXELS) {
            throw new PhotoException("a photo has at most 60 million pixels; make it smaller");
        }
        try {
            BufferedImage upright = upright(read(file, header), header.orientation());
            return new Photo(digest(file), upright.getWidth(), upright.getHeight(), jpeg(upright));
        } catch (IOException | RuntimeException e) {
            throw unreadable(e);
        }
    }

    private static PhotoException unreadable(Exception cause) {
        return new PhotoException("that photo cannot be read; save it as an ordinary JPEG or PNG", cause);
    }

    /** A photo that was made anew before, as it is; anything else is {@link #remade}. */
    public synchronized Photo kept(byte[] file) throws PhotoException {
        if (file.length > MOST_BYTES || !JpegParts.onlyAPicture(file)) {
            return remade(file);
        }
        PhotoHeader header = PhotoHeader.of(file);
        if (header.width() > LONGEST_SIDE || header.height() > LONGEST_SIDE) {
            return remade(file);
        }
        try {
            BufferedImage seen = read(file, header);
            return new Photo(digest(file), seen.getWidth(), seen.getHeight(), file.clone());
        } catch (IOException | RuntimeException e) {
            throw unreadable(e);
        }
    }

    private static BufferedImage read(byte[] file, PhotoHeader header) throws IOException {
        Iterator<ImageReader> readers = ImageIO.getImageReadersByFormatName(header.kind());
        if (!readers.hasNext()) {
            throw new IOException("this Java reads no " + header.kind());
        }
        ImageReader reader = readers.next();
        try (MemoryCacheImageInputStream in = new MemoryCacheImageInputStream(new ByteArrayInputStream(file))) {
            reader.setInput(in, true, true); // what else is in the file is not even unpacked
            if (reader.getWidth(0) != header.width() || reader.getHeight(0) != header.height()) {
                throw new IOException("it has two sizes");
            }
            ImageReadParam param = reader.getDefaultReadParam();
            int step = Math.max(1, Math.max(header.width(), header.height()) / (2 * LONGEST_SIDE));
            param.setSourceSubsampling(step, step, 0, 0);
            return reader.read(0, param);
        } finally {
            reader.dispose();
        }
    }

    private static BufferedImage upright(BufferedImage photo, int orientation) {
        double scale = Math.min(1, LONGEST_SIDE / (double) Math.max(photo.getWidth(), photo.getHeight()));
        int width = Math.max(1, (int) Math.round(photo.getWidth() * scale));
        int height = Math.max(1, (int) Math.round(photo.getHeight() * scale));
        boolean turned = orientation >= FIRST_TURNED;
        BufferedImage upright =
                new BufferedImage(turned ? height : width, turned ? width : height, BufferedImage.TYPE_INT_RGB);
        Graphics2D pen = upright.createGraphics();
        try {
            pen.setColor(Color.WHITE); // beneath what can be seen through
            pen.fillRect(0, 0, upright.getWidth(), upright.getHeight());
            pen.setRenderingHint(RenderingHints.KEY_INTERPOLATION, RenderingHints.VALUE_INTERPOLATION_BICUBIC);
            pen.transform(turn(orientation, width, height));
            pen.drawImage(photo, 0, 0, width, height, null);
        } finally {
            pen.dispose();
        }
        return upright;
    }

    /** From a photo as it lies in the file to how it stands: Exif's eight ways. */
    private static AffineTransform turn(int orientation, int width, int height) {
        return switch (orientation) {
            case 2 -> new AffineTransform(-1, 0, 0, 1, width, 0);
            case 3 -> new AffineTransform(-1, 0, 0, -1, width, height);
            case 4 -> new AffineTransform(1, 0, 0, -1, 0, height);
            case 5 -> new AffineTransform(0, 1, 1, 0, 0, 0);
            case 6 -> new AffineTransform(0, 1, -1, 0, height, 0);
            case 7 -> new AffineTransform(0, -1, -1, 0, height, width);
            case 8 -> new AffineTransform(0, -1, 1, 0, 0, width);
            default -> new AffineTransform();
        };
    }

    private static byte[] jpeg(BufferedImage photo) throws IOException {
        ImageWriter writer = ImageIO.getImageWritersByFormatName("jpeg").next();
        ByteArrayOutputStream bytes = new ByteArrayOutputStream(256 * 1024);
        try (MemoryCacheImageOutputStream out = new MemoryCacheImageOutputStream(bytes)) {
            writer.setOutput(out);
            ImageWriteParam param = writer.getDefaultWriteParam();
            param.setCompressionMode(ImageWriteParam.MODE_EXPLICIT);
            param.setCompressionQuality(QUALITY);
            writer.write(null, new IIOImage(photo, null, null), param);
        } finally {
            writer.dispose();
        }
        return bytes.toByteArray();
    }

    private static String digest(byte[] file) {
        try {
            return HexFormat.of().formatHex(MessageDigest.getInstance("SHA-256").digest(file));
        } catch (NoSuchAlgorithmException e) {
            throw new IllegalStateException("every Java has SHA-256", e);
        }
    }
}
