package spoonfall.cli.door;

import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.ObjectMapper;
import java.io.IOException;
import java.net.ConnectException;
import java.net.URI;
import java.net.http.HttpClient;
import java.net.http.HttpConnectTimeoutException;
import java.net.http.HttpRequest;
import java.net.http.HttpResponse;
import java.time.Duration;
import java.util.Optional;
import spoonfall.cli.option.CommandException;
import spoonfall.door.Role;

/** Asks the service that runs on this machine about its door. */
final class DoorClient {
    private static final ObjectMapper MAPPER = new ObjectMapper();
    private static final Duration LONGEST = Duration.ofSeconds(5);
    private static final int FIRST_ERROR = 400;

    private final int port;
    private final HttpClient client =
            HttpClient.newBuilder().connectTimeout(LONGEST).build();

    /** A client of the service whose page is at that port. */
    DoorClient(int port) {
        this.port = port;
    }

    /** Makes a code for a role, and tells how the door stands then; empty if no service runs there. */
    Optional<JsonNode> code(Role role) {
        HttpRequest request = HttpRequest.newBuilder(URI.create("http://127.0.0.1:" + port + "/api/door/code"))
                .timeout(LONGEST)
                .POST(HttpRequest.BodyPublishers.ofString("{\"role\":\"" + role.wireName() + "\"}"))
                .build();
        try {
            HttpResponse<String> answer = client.send(request, HttpResponse.BodyHandlers.ofString());
            JsonNode said = MAPPER.readTree(answer.body());
            if (answer.statusCode() >= FIRST_ERROR) {
                throw new CommandException(said.path("error").asText("the service answered " + answer.statusCode()));
            }
            return Optional.of(said);
        } catch (ConnectException | HttpConnectTimeoutException e) {
            return Optional.empty();
        } catch (InterruptedException e) {
            Thread.currentThread().interrupt();
            throw new CommandException("interrupted while the service was asked", e);
        } catch (IOException e) {
            throw new CommandException(
                    "what answers at port " + port + " is not Spoonfall; name its page's port with --port", e);
        }
    }
}
