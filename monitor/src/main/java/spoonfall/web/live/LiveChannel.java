package spoonfall.web.live;

import io.javalin.websocket.WsContext;
import io.micrometer.core.instrument.MeterRegistry;
import java.security.SecureRandom;
import java.util.LinkedHashMap;
import java.util.Map;
import java.util.Optional;
import java.util.function.Supplier;
import org.eclipse.jetty.util.thread.Scheduler;
import spoonfall.kitchen.Kitchen;
import spoonfall.kitchen.Kitchens;
import spoonfall.web.wire.AskedPan;

/** The live channel of docs/live-channel.md: which pages follow which pan, and what they are told. */
public final class LiveChannel {
    /** Closes the live channel of a page that asks for a pan that is not there. */
    private static final int NO_SUCH_PAN = 4404;

    private final Kitchens kitchens;
    private final PanBoard board;
    private final Snapshots snapshots;
    private final Map<Kitchen, LiveHub> hubs = new LinkedHashMap<>();

    /**
     * A channel on which nobody is told of anything yet.
     *
     * @param kitchens whose pans are followed
     * @param scheduler runs once the channel listens
     * @param registry counts what is sent
     */
    public LiveChannel(Kitchens kitchens, Supplier<Scheduler> scheduler, MeterRegistry registry) {
        this.kitchens = kitchens;
        board = new PanBoard(kitchens, scheduler);
        snapshots = new Snapshots(runName(), board);
        LiveCounts counts = new LiveCounts(registry);
        WaitingPages waiting = new WaitingPages(scheduler);
        for (Kitchen kitchen : kitchens.all()) {
            hubs.put(kitchen, new LiveHub(kitchen, snapshots, board, counts, waiting));
        }
    }

    private static String runName() {
        return Long.toString(new SecureRandom().nextLong(1L << 40), 36);
    }

    /** The snapshots that its pages begin with. */
    public Snapshots snapshots() {
        return snapshots;
    }

    /** Listens to every pan and to the jars. */
    public void listen() {
        board.listen();
        hubs.forEach(Kitchen::listen);
        hubs.values().forEach(hub -> kitchens.jars().listen(hub::jars));
    }

    /** How many pages there are. */
    public int pages() {
        return hubs.values().stream().mapToInt(LiveHub::size).sum();
    }

    /** A page follows the pan that it names, or the first. */
    public void join(WsContext ctx) {
        hub(ctx).ifPresentOrElse(
                        hub -> hub.join(ctx.session),
                        () -> ctx.closeSession(
                                NO_SUCH_PAN, AskedPan.unknown(kitchens, String.valueOf(ctx.queryParam("pan")))));
    }

    /** A page went. */
    public void part(WsContext ctx) {
        hub(ctx).ifPresent(hub -> hub.leave(ctx.session));
    }

    private Optional<LiveHub> hub(WsContext ctx) {
        String pan = ctx.queryParam("pan");
        Optional<Kitchen> kitchen = pan == null ? Optional.of(kitchens.first()) : kitchens.named(pan);
        return kitchen.map(hubs::get);
    }
}
