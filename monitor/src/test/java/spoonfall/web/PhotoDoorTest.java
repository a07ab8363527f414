package spoonfall.web;

import static org.assertj.core.api.Assertions.assertThat;

import java.awt.image.BufferedImage;
import java.io.ByteArrayInputStream;
import java.io.ByteArrayOutputStream;
import java.io.IOException;
import java.net.InetAddress;
import java.net.Socket;
import java.net.SocketTimeoutException;
import java.net.http.HttpResponse;
import java.nio.charset.StandardCharsets;
import java.nio.file.Path;
import java.util.Arrays;
import java.util.Optional;
import java.util.Random;
import javax.imageio.ImageIO;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import spoonfall.cook.Cooks;
import spoonfall.lab.Scenario;
import spoonfall.log.store.CookLog;
import spoonfall.log.store.book.BatchBook;
import spoonfall.probe.trace.Trace;
import spoonfall.web.wire.Asked;

/** Photos that come from a phone in the network, through TLS. */
final class PhotoDoorTest {
    private static final String PHOTOS = "/api/book/1/photos";
    private static final int PIECE_BYTES = 4096;

    @TempDir
    private Path folder;

    private Path file = Path.of("");
    private ServedDoor door;

    @BeforeEach
    void serve() {
        file = folder.resolve("cooks.db");
        try (CookLog log = CookLog.openOrMake(file)) {
            Trace trace = Cooks.trace(Scenario.CLEAN, 4);
            log.take(trace, Cooks.settings(trace));
        }
        door = ServedDoor.secure(folder, Optional.of(new BatchBook(file)));
    }

    @AfterEach
    void stop() {
        door.close();
    }

    /** Noise, so that it is some hundred kilobytes and comes in many pieces. */
    private static byte[] png() throws IOException {
        return png(400, 300);
    }

    private static byte[] png(int width, int height) throws IOException {
        Random random = new Random(7);
        BufferedImage image = new BufferedImage(width, height, BufferedImage.TYPE_INT_RGB);
        for (int y = 0; y < height; y++) {
            for (int x = 0; x < width; x++) {
                image.setRGB(x, y, random.nextInt());
            }
        }
        ByteArrayOutputStream png = new ByteArrayOutputStream();
        ImageIO.write(image, "png", png);
        return png.toByteArray();
    }

    @Test
    void aCooksPhone_bringsAPhoto_whichAViewerSees_andNobodyElse() throws Exception {
        String cook = door.pair("cook", "Phone");
        String viewer = door.pair("viewer", "Hall tablet");
        byte[] png = png();
        assertThat(png).hasSizeGreaterThan(Asked.LARGEST_BYTES * 50);
        HttpResponse<byte[]> taken = door.file("POST", PHOTOS, png, cook);
        assertThat(taken.statusCode()).as(words(taken)).isEqualTo(201);
        HttpResponse<byte[]> seen = door.file("GET", PHOTOS + "/1", new byte[0], viewer);
        assertThat(seen.statusCode()).isEqualTo(200);
        assertThat(ImageIO.read(new ByteArrayInputStream(seen.body())).getWidth())
                .isEqualTo(400);
        byte[] begin = Arrays.copyOf(png, 2000); // of a long one the door takes no more than it needs to refuse it
        assertThat(door.file("POST", PHOTOS, begin, viewer).statusCode()).isEqualTo(403);
        assertThat(door.file("DELETE", PHOTOS + "/1", new byte[0], viewer).statusCode())
                .isEqualTo(403);
        assertThat(door.file("POST", PHOTOS, begin, "").statusCode()).isEqualTo(401);
        assertThat(door.file("GET", PHOTOS + "/1", new byte[0], "").statusCode())
                .isEqualTo(401);
        assertThat(door.file("DELETE", PHOTOS + "/1", new byte[0], cook).statusCode())
                .isEqualTo(200);
    }

    @Test
    void whatIsNoPhoto_isRefusedWithAReason_andNothingIsKept() throws Exception {
        String cook = door.pair("cook", "Phone");
        byte[] script = "<script>alert(1)</script>".getBytes(StandardCharsets.US_ASCII);
        HttpResponse<byte[]> refused = door.file("POST", PHOTOS, script, cook);
        assertThat(refused.statusCode()).isEqualTo(400);
        assertThat(words(refused)).contains("neither a JPEG nor a PNG");
        byte[] cut = Arrays.copyOf(png(), 20_000);
        assertThat(door.file("POST", PHOTOS, cut, cook).statusCode()).isEqualTo(400);
        assertThat(door.file("POST", "/api/book/99/photos", script, cook).statusCode())
                .isEqualTo(404);
        assertThat(door.outside("GET", "/api/book/1", "", cook).body()).contains("\"photos\":[]");
    }

    /** The photo comes in small pieces for as long as it takes to end the other, which sends a byte where the photo sends four thousand. */
    @Test
    void aPhotoThatComesSlowly_arrives_whileABodyThatDripsIsCut() throws Exception {
        byte[] png = png(1200, 900);
        try (ServedDoor plain = ServedDoor.plain(folder.resolve("plain"), Optional.of(new BatchBook(file)));
                Socket slow = new Socket(InetAddress.getLoopbackAddress(), plain.server.networkPort());
                Socket drips = new Socket(InetAddress.getLoopbackAddress(), plain.server.networkPort())) {
            send(slow, head(plain, PHOTOS, png.length) + "Cookie: " + plain.pair("cook", "Phone") + "\r\n\r\n");
            send(drips, head(plain, "/api/door/pair", Asked.LARGEST_BYTES) + "\r\n{");
            int sent = 0;
            while (!isCutByAnotherByte(drips)) {
                assertThat(sent).as("what the photo had to wait for").isLessThan(png.length - PIECE_BYTES);
                slow.getOutputStream().write(png, sent, PIECE_BYTES);
                sent += PIECE_BYTES;
            }
            slow.getOutputStream().write(png, sent, png.length - sent);
            byte[] answer = new byte[12];
            assertThat(slow.getInputStream().readNBytes(answer, 0, answer.length))
                    .isEqualTo(answer.length);
            assertThat(new String(answer, StandardCharsets.US_ASCII)).isEqualTo("HTTP/1.1 201");
        }
    }

    private static String head(ServedDoor door, String path, int bytes) {
        return "POST " + path + " HTTP/1.1\r\nHost: localhost:" + door.server.networkPort() + "\r\nOrigin: "
                + door.outside() + "\r\nContent-Length: " + bytes + "\r\n";
    }

    private static void send(Socket socket, String text) throws IOException {
        socket.getOutputStream().write(text.getBytes(StandardCharsets.US_ASCII));
    }

    /** Sends a byte more and waits a moment for an answer, which sets the pace. */
    private static boolean isCutByAnotherByte(Socket socket) {
        try {
            send(socket, "x");
            socket.setSoTimeout(50);
            return socket.getInputStream().read() < 0;
        } catch (SocketTimeoutException e) {
            return false;
        } catch (IOException e) {
            return true;
        }
    }

    private static String words(HttpResponse<byte[]> answer) {
        return new String(answer.body(), StandardCharsets.UTF_8);
    }
}
