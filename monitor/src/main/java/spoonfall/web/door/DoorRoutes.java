package spoonfall.web.door;

import com.fasterxml.jackson.databind.JsonNode;
import io.javalin.config.RoutesConfig;
import io.javalin.http.Context;
import io.javalin.http.ForbiddenResponse;
import io.javalin.http.NotFoundResponse;
import java.io.UncheckedIOException;
import java.time.Duration;
import java.time.InstantSource;
import java.util.List;
import java.util.Optional;
import java.util.function.IntSupplier;
import java.util.function.LongSupplier;
import org.slf4j.Logger;
import org.slf4j.LoggerFactory;
import spoonfall.door.Clients;
import spoonfall.door.Device;
import spoonfall.door.DeviceBook;
import spoonfall.door.PairingCode;
import spoonfall.door.PairingDesk;
import spoonfall.door.Role;
import spoonfall.kitchen.ask.Refusal;
import spoonfall.web.wire.Answers;
import spoonfall.web.wire.Asked;

/** The calls by which devices are paired, listed and revoked. Only this machine makes codes and revokes. */
public final class DoorRoutes {
    /** Where a device enters its code. */
    static final String PAIR = "/api/door/pair";

    private static final Logger LOG = LoggerFactory.getLogger(DoorRoutes.class);
    private static final Duration COOKIE_LIFE = Duration.ofDays(400);
    private static final String NO_NETWORK =
            "Spoonfall serves this machine only; start it with --lan to let devices in";

    private final Optional<NetworkDoor> network;
    private final Door door;
    private final PairingDesk desk;
    private final DoorViews views;
    private final LongSupplier clockMillis;
    private final InstantSource wall;

    /**
     * The calls.
     *
     * @param networkPort the port that the network sees
     * @param clockMillis milliseconds of a clock that never jumps
     */
    public DoorRoutes(Optional<NetworkDoor> network, Door door, IntSupplier networkPort, LongSupplier clockMillis) {
        this.network = network;
        this.door = door;
        this.clockMillis = clockMillis;
        desk = new PairingDesk();
        views = new DoorViews(desk, networkPort);
        wall = InstantSource.system();
    }

    /** Adds the calls. */
    public void add(RoutesConfig routes) {
        routes.get("/api/door", this::state);
        routes.post("/api/door/code", this::open);
        routes.delete("/api/door/code", this::forget);
        routes.post(PAIR, this::pair);
        routes.delete("/api/door/devices/{id}", this::revoke);
    }

    private void state(Context ctx) {
        if (door.isHere(ctx)) {
            network.ifPresent(served -> served.devices().refresh());
            Answers.json(ctx, 200, views.here(network, clockMillis.getAsLong()));
        } else {
            Answers.json(ctx, 200, DoorViews.outside(Door.device(ctx).orElseThrow()));
        }
    }

    private void open(Context ctx) {
        NetworkDoor served = managed(ctx);
        Role role = understood(Asked.needed(Asked.body(ctx, List.of("role")), "role", "viewer"));
        PairingCode code = desk.open(role, clockMillis.getAsLong());
        LOG.info("a code was made for a {}", code.role().wireName());
        Answers.json(ctx, 201, views.here(Optional.of(served), clockMillis.getAsLong()));
    }

    private void forget(Context ctx) {
        NetworkDoor served = managed(ctx);
        desk.forget();
        Answers.json(ctx, 200, views.here(Optional.of(served), clockMillis.getAsLong()));
    }

    private void pair(Context ctx) {
        if (door.isHere(ctx)) {
            throw new Refusal("this machine needs no code");
        }
        NetworkDoor served = network.orElseThrow(() -> new Refusal(NO_NETWORK));
        JsonNode asked = Asked.body(ctx, List.of("code", "name"));
        String typed = Asked.needed(asked, "code", "the letters and digits that the other page shows");
        String name = checkedName(Asked.needed(asked, "name", "Kitchen tablet"));
        String client = Clients.named(ctx.req().getRemoteAddr());
        PairingDesk.Outcome outcome =
                desk.enter(typed, client, clockMillis.getAsLong(), role -> letIn(ctx, served, name, role));
        if (outcome instanceof PairingDesk.Outcome.Wait wait) {
            throw Door.tooMany(ctx, Math.max(1, wait.left().toMillis() / 1000), "too many wrong codes");
        } else if (outcome instanceof PairingDesk.Outcome.Wrong) {
            LOG.warn("a wrong pairing code came from {}", client);
            throw new ForbiddenResponse(
                    "that code is not right, or its time is up; make a new one on the computer that "
                            + "watches the pan");
        }
    }

    private void letIn(Context ctx, NetworkDoor served, String name, Role role) {
        DeviceBook devices = served.devices();
        DeviceBook.Paired paired;
        try {
            paired = Door.device(ctx)
                    .map(before -> devices.replace(before, name, role, wall.instant()))
                    .orElseGet(() -> devices.add(name, role, wall.instant()));
        } catch (IllegalArgumentException e) {
            throw new Refusal(String.valueOf(e.getMessage()), e);
        }
        LOG.info("\"{}\" was paired as a {}", paired.device().name(), role.wireName());
        ctx.res()
                .addHeader(
                        "Set-Cookie",
                        Door.cookieName(served) + "=" + paired.token() + "; Path=/; Max-Age=" + COOKIE_LIFE.toSeconds()
                                + "; HttpOnly; SameSite=Strict" + (served.tls().isPresent() ? "; Secure" : ""));
        Answers.json(ctx, 201, DoorViews.outside(paired.device()));
    }

    private void revoke(Context ctx) {
        NetworkDoor served = managed(ctx);
        String id = ctx.pathParam("id");
        Device gone;
        try {
            gone = served.devices().revoke(id).orElseThrow(() -> new NotFoundResponse("no device has that id"));
        } catch (UncheckedIOException e) {
            throw new Refusal("the device is shut out until Spoonfall stops, but " + e.getMessage(), e);
        }
        LOG.info("\"{}\" was revoked", gone.name());
        Answers.json(ctx, 200, views.here(Optional.of(served), clockMillis.getAsLong()));
    }

    /** The door, for whoever may say who comes in: this machine alone. */
    private NetworkDoor managed(Context ctx) {
        if (!door.isHere(ctx)) {
            throw new ForbiddenResponse("devices are let in and shut out only on the computer that watches the pan");
        }
        return network.orElseThrow(() -> new Refusal(NO_NETWORK));
    }

    private static Role understood(String role) {
        try {
            return Role.named(role);
        } catch (IllegalArgumentException e) {
            throw new Refusal(String.valueOf(e.getMessage()), e);
        }
    }

    private static String checkedName(String name) {
        try {
            return Device.checkedName(name);
        } catch (IllegalArgumentException e) {
            throw new Refusal(String.valueOf(e.getMessage()), e);
        }
    }
}
