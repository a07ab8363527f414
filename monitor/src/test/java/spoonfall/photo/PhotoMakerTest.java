package spoonfall.photo;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;

import java.awt.Color;
import java.awt.Graphics2D;
import java.awt.image.BufferedImage;
import java.io.ByteArrayInputStream;
import java.io.ByteArrayOutputStream;
import java.io.IOException;
import java.nio.ByteBuffer;
import java.nio.charset.StandardCharsets;
import java.util.Arrays;
import java.util.Random;
import java.util.zip.CRC32;
import java.util.zip.DeflaterOutputStream;
import javax.imageio.ImageIO;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.Timeout;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

@Timeout(60)
final class PhotoMakerTest {
    private final PhotoMaker maker = new PhotoMaker();

    /** Red in the left upper corner, white elsewhere. */
    private static byte[] photo(String kind, int width, int height) throws IOException {
        BufferedImage image = new BufferedImage(width, height, BufferedImage.TYPE_INT_RGB);
        Graphics2D pen = image.createGraphics();
        pen.setColor(Color.WHITE);
        pen.fillRect(0, 0, width, height);
        pen.setColor(Color.RED);
        pen.fillRect(0, 0, width / 4, height / 4);
        pen.dispose();
        ByteArrayOutputStream bytes = new ByteArrayOutputStream();
        ImageIO.write(image, kind, bytes);
        return bytes.toByteArray();
    }

    /** The same with a place and an orientation in it, as a telephone writes them. */
    private static byte[] withExif(byte[] jpeg, int orientation) {
        ByteBuffer exif = ByteBuffer.allocate(200);
        exif.put("Exif\0\0MM\0*".getBytes(StandardCharsets.US_ASCII)).putInt(8).putShort((short) 1);
        exif.putShort((short) 0x0112)
                .putShort((short) 3)
                .putInt(1)
                .putShort((short) orientation)
                .putShort((short) 0);
        exif.putInt(0).put("GPSLatitude 51.5074".getBytes(StandardCharsets.US_ASCII));
        ByteBuffer all = ByteBuffer.allocate(jpeg.length + 4 + exif.position());
        all.put(jpeg, 0, 2).putShort((short) 0xFFE1).putShort((short) (2 + exif.position()));
        all.put(exif.array(), 0, exif.position()).put(jpeg, 2, jpeg.length - 2);
        return all.array();
    }

    private static boolean contains(byte[] bytes, String text) {
        return new String(bytes, StandardCharsets.ISO_8859_1).contains(text);
    }

    private static boolean redAt(Photo photo, double x, double y) throws IOException {
        BufferedImage image = ImageIO.read(new ByteArrayInputStream(photo.jpeg()));
        Color colour = new Color(image.getRGB((int) (x * image.getWidth()), (int) (y * image.getHeight())));
        return colour.getGreen() < 100 && colour.getRed() > 150;
    }

    @ParameterizedTest
    @ValueSource(strings = {"jpeg", "png"})
    void aPhoto_isMadeAnewAndSmall(String kind) throws IOException, PhotoException {
        Photo made = maker.remade(photo(kind, 4000, 3000));
        assertThat(made.width()).isEqualTo(PhotoMaker.LONGEST_SIDE);
        assertThat(made.height()).isCloseTo(1200, within(1));
        assertThat(redAt(made, 0.1, 0.1)).isTrue();
        assertThat(redAt(made, 0.6, 0.6)).isFalse();
    }

    @Test
    void aSmallPhoto_keepsItsSize() throws IOException, PhotoException {
        assertThat(maker.remade(photo("png", 40, 30)).width()).isEqualTo(40);
    }

    /** Where the corner that lies at the left top of the file stands, by Exif's orientation (JEITA CP-3451, from memory). */
    @ParameterizedTest
    @ValueSource(ints = {1, 2, 3, 4, 5, 6, 7, 8})
    void everyOrientation_isTurnedUpright_andThePlaceIsGone(int orientation) throws IOException, PhotoException {
        byte[] file = withExif(photo("jpeg", 400, 300), orientation);
        assertThat(contains(file, "GPSLatitude")).isTrue();
        Photo made = maker.remade(file);
        boolean turned = orientation >= 5;
        assertThat(made.width()).isEqualTo(turned ? 300 : 400);
        boolean right = orientation == 2 || orientation == 3 || orientation == 6 || orientation == 7;
        boolean below = orientation == 3 || orientation == 4 || orientation == 7 || orientation == 8;
        assertThat(redAt(made, right ? 0.9 : 0.1, below ? 0.9 : 0.1)).isTrue();
        assertThat(redAt(made, right ? 0.1 : 0.9, below ? 0.1 : 0.9)).isFalse();
        assertThat(contains(made.jpeg(), "GPSLatitude")).isFalse();
        assertThat(contains(made.jpeg(), "Exif")).isFalse();
    }

    private static void chunk(ByteArrayOutputStream png, String name, byte[] data) {
        byte[] named = ByteBuffer.allocate(4 + data.length)
                .put(name.getBytes(StandardCharsets.US_ASCII))
                .put(data)
                .array();
        CRC32 sum = new CRC32();
        sum.update(named);
        png.writeBytes(ByteBuffer.allocate(4).putInt(data.length).array());
        png.writeBytes(named);
        png.writeBytes(ByteBuffer.allocate(4).putInt((int) sum.getValue()).array());
    }

    private static byte[] png(int width, int height, byte[] rows, byte[] text) throws IOException {
        ByteArrayOutputStream png = new ByteArrayOutputStream();
        png.writeBytes(new byte[] {(byte) 0x89, 'P', 'N', 'G', 13, 10, 26, 10});
        ByteBuffer header = ByteBuffer.allocate(13).putInt(width).putInt(height);
        chunk(png, "IHDR", header.put(new byte[] {8, 0, 0, 0, 0}).array());
        if (text.length > 0) {
            chunk(png, "zTXt", text);
        }
        ByteArrayOutputStream data = new ByteArrayOutputStream();
        try (DeflaterOutputStream zip = new DeflaterOutputStream(data)) {
            zip.write(rows);
        }
        chunk(png, "IDAT", data.toByteArray());
        chunk(png, "IEND", new byte[0]);
        return png.toByteArray();
    }

    @Test
    void bombs_areRefusedByTheirHeader() throws IOException {
        assertThatThrownBy(() -> maker.remade(png(19_000, 19_000, new byte[1000], new byte[0])))
                .hasMessageContaining("60 million pixels");
        assertThatThrownBy(() -> maker.remade(png(2_000_000_000, 1, new byte[10], new byte[0])))
                .hasMessageContaining("60 million pixels");
        assertThatThrownBy(() -> maker.remade(png(-1, 5, new byte[10], new byte[0])))
                .hasMessageContaining("60 million pixels");
        assertThatThrownBy(() -> maker.remade(new byte[PhotoMaker.MOST_BYTES + 1]))
                .hasMessageContaining("at most 12 MB");
    }

    @Test
    void textThatUnpacksToGigabytes_isNeverUnpacked() throws IOException, PhotoException {
        ByteArrayOutputStream text = new ByteArrayOutputStream();
        text.writeBytes("Comment\0\0".getBytes(StandardCharsets.US_ASCII));
        try (DeflaterOutputStream zip = new DeflaterOutputStream(text)) {
            byte[] zeros = new byte[1024 * 1024];
            for (int i = 0; i < 400; i++) {
                zip.write(zeros);
            }
        }
        long before = Runtime.getRuntime().totalMemory() - Runtime.getRuntime().freeMemory();
        assertThat(maker.remade(png(2, 2, new byte[6], text.toByteArray())).width())
                .isEqualTo(2);
        long grown = Runtime.getRuntime().totalMemory() - Runtime.getRuntime().freeMemory() - before;
        assertThat(grown).as("memory").isLessThan(200L * 1024 * 1024);
    }

    @Test
    void whatIsNoPhoto_isRefused() {
        for (String text : new String[] {
            "",
            "GIF89a....",
            "<svg xmlns='http://www.w3.org/2000/svg' onload='alert(1)'/>",
            "BM",
            "%PDF-1.7",
            "\u00ff\u00d8"
        }) {
            assertThatThrownBy(() -> maker.remade(text.getBytes(StandardCharsets.ISO_8859_1)))
                    .as(text)
                    .isInstanceOf(PhotoException.class);
        }
    }

    @Test
    void damagedPhotos_areReadOrRefused_andNothingElse() throws IOException {
        long seed = 20261126;
        System.out.println("PhotoMakerTest damages with seed " + seed);
        Random random = new Random(seed);
        byte[][] whole = {withExif(photo("jpeg", 64, 48), 6), photo("png", 64, 48)};
        for (int i = 0; i < 400; i++) {
            byte[] file = whole[i % 2].clone();
            for (int k = 0; k < 1 + i % 5; k++) {
                file[random.nextInt(i % 3 == 0 ? 60 : file.length)] = (byte) random.nextInt(256);
            }
            file = random.nextBoolean() ? file : Arrays.copyOf(file, random.nextInt(file.length));
            try {
                assertThat(maker.remade(file).width()).isPositive();
            } catch (PhotoException e) {
                assertThat(e.getMessage()).contains(" ");
            }
        }
    }

    @Test
    void aPhotoThatWasMadeAnewBefore_staysAsItIs() throws Exception {
        Photo made = maker.remade(photo("png", 2000, 900));
        Photo kept = maker.kept(made.jpeg());
        assertThat(kept.jpeg()).isEqualTo(made.jpeg());
        assertThat(new int[] {kept.width(), kept.height()}).containsExactly(1600, 720);
    }

    @Test
    void whateverHoldsMoreThanAPicture_isMadeAnew() throws Exception {
        byte[] bare = maker.remade(photo("jpeg", 400, 300)).jpeg();
        byte[] behind = Arrays.copyOf(bare, bare.length + 20);
        System.arraycopy("GPSLatitude 51.5074".getBytes(StandardCharsets.US_ASCII), 0, behind, bare.length, 19);
        byte[] large = photo("jpeg", 1700, 300);
        for (byte[] file : new byte[][] {withExif(bare, 1), behind, photo("png", 400, 300), large}) {
            Photo photo = maker.kept(file);
            assertThat(photo.jpeg()).isNotEqualTo(file);
            assertThat(contains(photo.jpeg(), "GPSLatitude")).isFalse();
            assertThat(Math.max(photo.width(), photo.height())).isLessThanOrEqualTo(PhotoMaker.LONGEST_SIDE);
            assertThat(redAt(photo, 0.1, 0.1)).isTrue();
        }
    }

    @Test
    void aPhotoThatEndsTooEarlyOrIsNone_isNotKept() throws Exception {
        byte[] bare = maker.remade(photo("jpeg", 400, 300)).jpeg();
        for (byte[] file :
                new byte[][] {Arrays.copyOf(bare, 300), new byte[0], {(byte) 0xFF, (byte) 0xD8}, {1, 2, 3}}) {
            assertThatThrownBy(() -> maker.kept(file)).isInstanceOf(PhotoException.class);
        }
    }
}
