package spoonfall.door;

import com.google.zxing.WriterException;
import com.google.zxing.qrcode.decoder.ErrorCorrectionLevel;
import com.google.zxing.qrcode.encoder.ByteMatrix;
import com.google.zxing.qrcode.encoder.Encoder;
import java.util.Locale;

/** A text as a QR code (ISO/IEC 18004), for a page and for a terminal. */
public final class QrPicture {
    /** The light edge that readers need, in modules. */
    private static final int EDGE = 4;

    private final ByteMatrix modules;

    private QrPicture(ByteMatrix modules) {
        this.modules = modules;
    }

    /** The code of a short text, such as an address. */
    public static QrPicture of(String text) {
        try {
            return new QrPicture(Encoder.encode(text, ErrorCorrectionLevel.M).getMatrix());
        } catch (WriterException e) {
            throw new IllegalArgumentException("that is too long for a picture", e);
        }
    }

    /** Its width and height with its edge, in modules. */
    public int size() {
        return modules.getWidth() + 2 * EDGE;
    }

    /** Whether a module is dark; the edge is not. */
    boolean dark(int x, int y) {
        int inX = x - EDGE;
        int inY = y - EDGE;
        boolean inside = inX >= 0 && inY >= 0 && inX < modules.getWidth() && inY < modules.getHeight();
        return inside && modules.get(inX, inY) == 1;
    }

    /** The dark modules as the path of an SVG whose view box is {@code 0 0 size size}: a bar for each run in a row. */
    public String svgPath() {
        StringBuilder path = new StringBuilder();
        for (int y = 0; y < size(); y++) {
            for (int x = 0; x < size(); x++) {
                int from = x;
                while (dark(x, y)) {
                    x++;
                }
                if (x > from) {
                    path.append(String.format(Locale.ROOT, "M%d %dh%dv1H%dz", from, y, x - from, from));
                }
            }
        }
        return path.toString();
    }

    /** For a terminal: two modules a character, black on white whatever its colours are. */
    public String halfBlocks() {
        StringBuilder text = new StringBuilder();
        for (int y = 0; y < size(); y += 2) {
            text.append("\u001b[30;107m");
            for (int x = 0; x < size(); x++) {
                boolean upper = dark(x, y);
                boolean lower = dark(x, y + 1);
                text.append(upper ? (lower ? '█' : '▀') : (lower ? '▄' : ' '));
            }
            text.append("\u001b[0m\n");
        }
        return text.toString();
    }
}
