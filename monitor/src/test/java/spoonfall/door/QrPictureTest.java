package spoonfall.door;

import static org.assertj.core.api.Assertions.assertThat;

import com.google.zxing.BinaryBitmap;
import com.google.zxing.RGBLuminanceSource;
import com.google.zxing.ReaderException;
import com.google.zxing.common.HybridBinarizer;
import com.google.zxing.qrcode.QRCodeReader;
import java.util.Arrays;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import org.junit.jupiter.api.Test;

/** What is drawn is read again by a reader of QR codes (ZXing's own). */
final class QrPictureTest {
    private static final String URL = "https://192.168.100.200:8461/pair.html#K3F97XWM";
    private static final int SCALE = 8;
    private static final int BLACK = 0xff000000;

    private static String read(int[] pixels, int side) throws ReaderException {
        BinaryBitmap image = new BinaryBitmap(new HybridBinarizer(new RGBLuminanceSource(side, side, pixels)));
        return new QRCodeReader().decode(image).getText();
    }

    private static int[] white(int side) {
        int[] pixels = new int[side * side];
        Arrays.fill(pixels, 0xffffffff);
        return pixels;
    }

    private static void fill(int[] pixels, int side, int x, int y, int width) {
        for (int dy = 0; dy < SCALE; dy++) {
            for (int dx = 0; dx < width * SCALE; dx++) {
                pixels[(y * SCALE + dy) * side + x * SCALE + dx] = BLACK;
            }
        }
    }

    @Test
    void thePathOfAPage_isRead() throws ReaderException {
        QrPicture picture = QrPicture.of(URL);
        int side = picture.size() * SCALE;
        int[] pixels = white(side);
        Matcher bars = Pattern.compile("M(\\d+) (\\d+)h(\\d+)v1H\\d+z").matcher(picture.svgPath());
        while (bars.find()) {
            fill(
                    pixels,
                    side,
                    Integer.parseInt(bars.group(1)),
                    Integer.parseInt(bars.group(2)),
                    Integer.parseInt(bars.group(3)));
        }
        assertThat(read(pixels, side)).isEqualTo(URL);
    }

    @Test
    void theBlocksOfATerminal_areRead() throws ReaderException {
        QrPicture picture = QrPicture.of(URL);
        int side = (picture.size() + 1) * SCALE;
        int[] pixels = white(side);
        String[] lines =
                picture.halfBlocks().replaceAll("\u001b\\[[0-9;]*m", "").split("\n", -1);
        for (int row = 0; row < lines.length; row++) {
            for (int x = 0; x < lines[row].length(); x++) {
                char block = lines[row].charAt(x);
                if (block == '█' || block == '▀') {
                    fill(pixels, side, x, 2 * row, 1);
                }
                if (block == '█' || block == '▄') {
                    fill(pixels, side, x, 2 * row + 1, 1);
                }
            }
        }
        assertThat(read(pixels, side)).isEqualTo(URL);
    }
}
