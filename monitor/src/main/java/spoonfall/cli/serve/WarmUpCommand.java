package spoonfall.cli.serve;

import java.io.IOException;
import java.net.URI;
import java.net.http.HttpClient;
import java.net.http.HttpRequest;
import java.net.http.HttpResponse;
import java.net.http.WebSocket;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.Optional;
import java.util.concurrent.Callable;
import java.util.concurrent.CompletableFuture;
import java.util.concurrent.CompletionStage;
import java.util.concurrent.ExecutionException;
import java.util.concurrent.TimeUnit;
import java.util.concurrent.TimeoutException;
import java.util.stream.Stream;
import org.jspecify.annotations.Nullable;
import picocli.CommandLine.Command;
import spoonfall.cli.option.CommandException;
import spoonfall.cli.sample.SampleTrace;
import spoonfall.kitchen.Kitchen;
import spoonfall.kitchen.Kitchens;
import spoonfall.kitchen.file.PanEntry;
import spoonfall.kitchen.thermometer.Thermometry;
import spoonfall.log.store.Recorder;
import spoonfall.probe.trace.Trace;
import spoonfall.probe.trace.TraceProbe;

/**
 * {@code spoonfall warm-up}: starts the service, uses it once and ends. The launcher runs it after a build to
 * record which classes a start needs, so that later starts are quick.
 */
@Command(name = "warm-up", hidden = true, description = "Start, use the page once, and end.")
public final class WarmUpCommand implements Callable<Integer> {
    @Override
    public Integer call() throws IOException, InterruptedException {
        Trace trace = SampleTrace.load();
        Path folder = Files.createTempDirectory("spoonfall");
        Recorder recorder = Recorder.open(folder.resolve("cooks.db"));
        Kitchen kitchen = new Kitchen(
                DemoCommand.plan(trace, 400),
                clock -> List.of(new TraceProbe("pan", "a simulated cook", trace, clock)),
                System::nanoTime,
                Thermometry.none(),
                recorder.journal(PanEntry.ONLY));
        try (Service service = Service.start(Kitchens.one(kitchen), Optional.of(recorder), 0)) {
            HttpClient client = HttpClient.newHttpClient();
            String host = "localhost:" + service.port();
            for (String path : new String[] {"/", "/api/state", "/healthz", "/metrics"}) {
                HttpRequest request = HttpRequest.newBuilder(URI.create("http://" + host + path))
                        .build();
                HttpResponse<Void> response = client.send(request, HttpResponse.BodyHandlers.discarding());
                if (response.statusCode() != 200) {
                    throw new CommandException(path + " answered " + response.statusCode());
                }
            }
            CompletableFuture<Void> heard = new CompletableFuture<>();
            WebSocket socket = client.newWebSocketBuilder()
                    .buildAsync(URI.create("ws://" + host + "/live"), new FirstMessages(heard))
                    .join();
            heard.get(5, TimeUnit.SECONDS);
            socket.abort();
            return 0;
        } catch (ExecutionException | TimeoutException e) {
            throw new CommandException("the live channel said nothing", e);
        } finally {
            try (Stream<Path> files = Files.list(folder)) {
                for (Path file : files.toList()) {
                    Files.delete(file);
                }
            }
            Files.delete(folder);
        }
    }

    /** Completes when the snapshot and some changes have come. */
    private static final class FirstMessages implements WebSocket.Listener {
        private static final int ENOUGH = 10;
        private final CompletableFuture<Void> heard;
        private int messages;

        private FirstMessages(CompletableFuture<Void> heard) {
            this.heard = heard;
        }

        @Override
        public @Nullable CompletionStage<?> onText(WebSocket socket, CharSequence data, boolean last) {
            if (last && ++messages >= ENOUGH) {
                heard.complete(null);
            }
            return WebSocket.Listener.super.onText(socket, data, last);
        }
    }
}
