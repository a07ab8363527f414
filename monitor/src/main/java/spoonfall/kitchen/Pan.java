package spoonfall.kitchen;

import java.time.Instant;
import java.util.ArrayDeque;
import java.util.ArrayList;
import java.util.Deque;
import java.util.List;
import java.util.Optional;
import java.util.OptionalLong;
import org.jspecify.annotations.Nullable;
import spoonfall.alarm.AlarmChange;
import spoonfall.cook.AlarmName;
import spoonfall.cook.CookAlarm;
import spoonfall.cook.CookEvent;
import spoonfall.cook.CookMonitor;
import spoonfall.cook.CookStatus;
import spoonfall.log.CookRecord;
import spoonfall.probe.Probe;
import spoonfall.probe.Quality;
import spoonfall.probe.Reading;
import spoonfall.words.Outlook;
import spoonfall.words.Storyteller;

/**
 * One pan on the hob and what is known of it: the cook's monitor with its story, record and latest changes.
 * Used by the kitchen's thread alone.
 */
final class Pan {
    private static final int CHANGES_KEPT = 200;

    private final KitchenPlan plan;
    private final KitchenCounts counts;
    private final Deque<KitchenChange> kept = new ArrayDeque<>();
    private final List<KitchenChange> fresh = new ArrayList<>();
    private ProbeState probe;
    private long seq;
    private int cookNumber = 1;
    private @Nullable Cook cook;
    private boolean news = true;
    private OptionalLong heardNanos = OptionalLong.empty();
    private long lastViewNanos = System.nanoTime();
    private Outlook outlook;
    private double outlookT = Double.NEGATIVE_INFINITY;

    Pan(KitchenPlan plan, Probe probe, KitchenCounts counts) {
        this.plan = plan;
        this.counts = counts;
        this.probe = new ProbeState(probe.name(), probe.place(), ProbeState.State.WAITING, "");
        outlook = ProbeWords.waiting(this.probe);
    }

    /** What begins with the first reading of a cook. */
    private record Cook(CookMonitor monitor, Storyteller story, CookRecord record, Climb climb, Instant startedAt) {}

    void accept(Reading reading, long atNanos) {
        Cook current = cook == null ? startCook(reading.atNanos()) : cook;
        handle(current.monitor().accept(reading));
        if (reading.quality() == Quality.GOOD) {
            current.record()
                    .add(current.monitor().timeS(), reading.temperatureC().orElseThrow());
            if (probe.state() != ProbeState.State.READING) {
                becomes(probe.with(ProbeState.State.READING));
            }
        }
        heardNanos = OptionalLong.of(atNanos);
        news = true;
    }

    void tick(long atNanos) {
        if (cook != null && probe.state() != ProbeState.State.ENDED) {
            handle(cook.monitor().advanceTo(atNanos));
        }
        news |= secondPassed();
    }

    private boolean secondPassed() {
        return System.nanoTime() - lastViewNanos >= 900_000_000L;
    }

    Optional<CookAlarm> acknowledge(String id, long atNanos) {
        if (cook == null) {
            return Optional.empty();
        }
        return cook.monitor().acknowledge(id, atNanos).map(done -> {
            handle(done.events());
            news = true;
            return done.alarm();
        });
    }

    void probeBecame(ProbeState.State state, String detail) {
        becomes(probe.with(state, detail));
    }

    void beginCook() {
        cook = null;
        cookNumber++;
        kept.clear();
        fresh.clear();
        heardNanos = OptionalLong.empty();
        outlookT = Double.NEGATIVE_INFINITY;
        news = true;
        if (probe.state() == ProbeState.State.READING || probe.state() == ProbeState.State.ENDED) {
            probe = probe.with(ProbeState.State.WAITING);
        }
    }

    List<KitchenChange> takeChanges() {
        List<KitchenChange> taken = List.copyOf(fresh);
        fresh.clear();
        return taken;
    }

    /** The newest view, if there is anything new to see. */
    Optional<PanView> takeView() {
        if (!news) {
            return Optional.empty();
        }
        news = false;
        lastViewNanos = System.nanoTime();
        PanView view = view();
        if (cook != null) {
            view.status().ifPresent(cook.climb()::add);
        }
        heardNanos = OptionalLong.empty();
        return Optional.of(view);
    }

    KitchenState state() {
        return new KitchenState(
                plan,
                cookNumber,
                Optional.ofNullable(cook).map(Cook::startedAt),
                probe,
                view(),
                List.copyOf(kept),
                cook == null ? List.of() : cook.climb().points());
    }

    CookRecord record() {
        return cook == null ? new CookRecord() : cook.record().copy();
    }

    private Cook startCook(long originNanos) {
        Cook started = new Cook(
                new CookMonitor(plan.settings(), originNanos),
                new Storyteller(plan.settings()),
                new CookRecord(),
                new Climb(),
                plan.startedAt().orElseGet(Instant::now));
        cook = started;
        return started;
    }

    private PanView view() {
        if (cook == null) {
            return new PanView(seq, Optional.empty(), ProbeWords.waiting(probe), List.of(), heardNanos);
        }
        CookStatus now = cook.monitor().status();
        boolean gone = probe.state() == ProbeState.State.LOST || probe.state() == ProbeState.State.ENDED;
        CookStatus status = gone ? now.stale() : now;
        List<CookAlarm> alarms = cook.monitor().alarms();
        if (Math.floor(status.t()) > outlookT || !fresh.isEmpty() || gone) {
            outlookT = Math.floor(status.t());
            outlook = cook.story().tell(status, alarms);
        }
        Outlook shown = gone ? ProbeWords.gone(probe, outlook) : outlook;
        return new PanView(seq, Optional.of(status), shown, alarms, heardNanos);
    }

    private void handle(List<CookEvent> events) {
        for (CookEvent event : events) {
            if (event instanceof CookEvent.StatusTaken) {
                continue;
            }
            add(new KitchenChange.Cook(++seq, event));
            if (event instanceof CookEvent.AlarmChanged alarm) {
                follow(alarm);
            }
        }
    }

    private void follow(CookEvent.AlarmChanged event) {
        boolean raised = event.change() == AlarmChange.RAISED;
        if (raised) {
            counts.countRaised(event.alarm().name());
        }
        if (raised && event.alarm().name() == AlarmName.PROBE_SILENT && probe.state() == ProbeState.State.READING) {
            becomes(probe.with(ProbeState.State.SILENT));
        }
    }

    private void becomes(ProbeState next) {
        if (next.equals(probe)) {
            return;
        }
        probe = next;
        double t = cook == null ? 0 : cook.monitor().timeS();
        add(new KitchenChange.Probe(++seq, t, probe));
    }

    private void add(KitchenChange change) {
        fresh.add(change);
        kept.addLast(change);
        if (kept.size() > CHANGES_KEPT) {
            kept.removeFirst();
        }
        news = true;
    }
}
