package spoonfall.kitchen;

import java.time.Instant;
import java.util.ArrayDeque;
import java.util.ArrayList;
import java.util.Deque;
import java.util.EnumSet;
import java.util.List;
import java.util.Objects;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.OptionalLong;
import java.util.Set;
import java.util.function.Function;
import org.jspecify.annotations.Nullable;
import spoonfall.afternoon.Reminder;
import spoonfall.alarm.AlarmChange;
import spoonfall.alarm.AlarmState;
import spoonfall.cook.AlarmName;
import spoonfall.cook.CookAlarm;
import spoonfall.cook.CookEvent;
import spoonfall.cook.CookMonitor;
import spoonfall.cook.CookSettings;
import spoonfall.cook.CookStatus;
import spoonfall.cook.Stage;
import spoonfall.cook.TestWord;
import spoonfall.log.CookRecord;
import spoonfall.probe.Quality;
import spoonfall.probe.Reading;
import spoonfall.words.Outlook;
import spoonfall.words.TestSayings;

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
    private final Thermometers thermometers;
    private final Set<AlarmName> acknowledged = EnumSet.noneOf(AlarmName.class);
    private final AfternoonBook afternoon;
    private long seq;
    private int cookNumber = 1;
    private @Nullable Cook cook;
    private boolean news = true;
    private OptionalLong heardNanos = OptionalLong.empty();
    private Optional<HandEntry> typed = Optional.empty();
    private long lastViewNanos = System.nanoTime();
    private Outlook outlook;
    private double outlookT = Double.NEGATIVE_INFINITY;

    Pan(KitchenPlan plan, Thermometers thermometers, KitchenCounts counts, long originNanos) {
        this.plan = plan;
        this.counts = counts;
        this.thermometers = thermometers;
        afternoon = new AfternoonBook(plan, originNanos);
        outlook = ProbeWords.waiting(thermometers.state(thermometers.first()));
    }

    /** Takes an uncorrected reading of one of the thermometers. */
    void accept(Thermometer thermometer, Reading raw, long atNanos) {
        thermometers.heard(raw);
        Reading reading = thermometer.corrected(raw);
        if (thermometer == thermometers.first()) {
            if (!thermometers.firstInIce()) {
                follow(reading);
            }
        } else if (cook != null) {
            cook.monitor().compare(reading);
        }
        if (reading.quality() == Quality.GOOD && thermometer.becomes(ProbeState.State.READING)) {
            tell(thermometer);
        }
        heardNanos = OptionalLong.of(atNanos);
        news = true;
    }

    private void follow(Reading reading) {
        Cook current = cook == null ? startCook(reading.atNanos()) : cook;
        handle(current.monitor().accept(reading));
        if (reading.quality() == Quality.GOOD) {
            current.record()
                    .add(current.monitor().timeS(), reading.temperatureC().orElseThrow());
        }
        followAfternoon(reading.atNanos());
    }

    /** The afternoon of this pan. */
    AfternoonBook afternoon() {
        return afternoon;
    }

    private void followAfternoon(long atNanos) {
        for (Reminder reminder : afternoon.follow(atNanos, status())) {
            double laterS = cook == null ? 0 : afternoon.secondsAt(cook.originNanos());
            double t = cook == null ? 0 : cook.monitor().timeS();
            add(new KitchenChange.Reminded(++seq, t, reminder.name(), reminder.marked(laterS)));
        }
        tellAfternoon();
    }

    private Optional<CookStatus> status() {
        return Optional.ofNullable(cook).map(begun -> begun.monitor().status());
    }

    /** Tells how the afternoon stands, if that is news. Such changes are many, and only the newest counts: none is kept. */
    void tellAfternoon() {
        afternoon.news().ifPresent(view -> {
            fresh.add(new KitchenChange.Afternoon(++seq, view));
            news = true;
        });
    }

    void tick(long atNanos) {
        if (cook != null && thermometers.first().state() != ProbeState.State.ENDED) {
            handle(cook.monitor().advanceTo(atNanos));
            for (Thermometer other : thermometers.others()) {
                boolean silent = cook.monitor().otherQuality(other.name()) == Quality.SILENT;
                if (silent && other.state() == ProbeState.State.READING) {
                    becomes(other, ProbeState.State.SILENT, "");
                }
            }
        }
        followAfternoon(atNanos);
        news |= secondPassed();
    }

    private boolean secondPassed() {
        return System.nanoTime() - lastViewNanos >= 900_000_000L;
    }

    Optional<CookAlarm> acknowledge(String id, long atNanos) {
        Optional<CookAlarm> known = answer(monitor -> monitor.acknowledge(id, atNanos));
        known.ifPresent(alarm -> acknowledged.add(alarm.name()));
        return known;
    }

    Optional<CookAlarm> shelve(String id, int minutes, long atNanos) {
        return answer(monitor -> monitor.shelve(id, minutes, atNanos));
    }

    Optional<CookAlarm> unshelve(String id, long atNanos) {
        return answer(monitor -> monitor.unshelve(id, atNanos));
    }

    /** Somebody says something about a set test. */
    void say(TestWord word, long atNanos) {
        boolean asksForAPan = word.says() == TestWord.Says.BEGUN || word.says() == TestWord.Says.SEEN;
        if (cook == null && asksForAPan) {
            throw new Refusal("nothing was read of the pan yet, so there is nothing to test");
        }
        if (cook != null) {
            boolean open = cook.monitor().tests().open().isPresent();
            boolean boils = cook.monitor().status().stage().compareTo(Stage.ROLLING_BOIL) >= 0;
            if (asksForAPan && !open && !boils && cook.monitor().tests().tests().isEmpty()) {
                throw new Refusal("the pan does not boil yet; test when the test window opens");
            }
            CookSettings before = cook.monitor().tests().aim();
            boolean wasSet = cook.monitor().tests().set();
            handle(cook.monitor().say(word, atNanos));
            if (!wasSet && cook.monitor().tests().set()) {
                afternoon.testedAndSet(atNanos);
            }
            if (!cook.monitor().tests().aim().equals(before)) {
                cook.story().aim(cook.monitor().tests().aim());
            }
            outlookT = Double.NEGATIVE_INFINITY;
            news = true;
        }
    }

    private Optional<CookAlarm> answer(Function<CookMonitor, Optional<CookMonitor.Answer>> word) {
        if (cook == null) {
            return Optional.empty();
        }
        return word.apply(cook.monitor()).map(done -> {
            handle(done.events());
            news = true;
            return done.alarm();
        });
    }

    void becomes(Thermometer thermometer, ProbeState.State state, String detail) {
        if (thermometer.becomes(state, detail)) {
            tell(thermometer);
        }
    }

    /** Whether syrup boils in it: no moment to take the thermometer out. */
    boolean cooking() {
        return cook != null && cook.monitor().status().stage().boiling();
    }

    /** What the cook is measured against has changed: it is gone through again, so that nothing of it is lost. */
    void rebase(long atNanos) {
        outlookT = Double.NEGATIVE_INFINITY;
        news = true;
        if (cook == null) {
            return;
        }
        List<CookAlarm> before = cook.monitor().alarms();
        Cook again = cook.again(thermometers.settings(), thermometers.first().name(), thermometers.trusts(), atNanos);
        cook = again;
        for (CookAlarm alarm : again.monitor().alarms()) {
            Optional<CookAlarm> old =
                    before.stream().filter(one -> one.name() == alarm.name()).findFirst();
            OptionalDouble asideUntilT = old.map(CookAlarm::shelvedUntilT).orElse(OptionalDouble.empty());
            if (asideUntilT.isPresent()) {
                double leftS = asideUntilT.getAsDouble() - again.monitor().timeS();
                again.monitor().shelve(alarm.id(), Math.max(1, (int) Math.ceil(leftS / 60)), atNanos);
                continue;
            }
            boolean open = old.isPresent() && old.get().state() != AlarmState.ACKNOWLEDGED;
            boolean over = alarm.state() == AlarmState.RETURNED;
            if (!open && (over || acknowledged.contains(alarm.name()))) {
                again.monitor().acknowledge(alarm.id(), atNanos);
            } else if (old.isEmpty()) {
                handle(List.of(new CookEvent.AlarmChanged(alarm.raisedT(), AlarmChange.RAISED, alarm)));
            }
        }
    }

    /** The latest reading of the followed thermometer, which somebody typed, was a mistake: the cook is gone through again. */
    void takeBackLast(long atNanos) {
        Cook current = Objects.requireNonNull(cook, "nothing was read in this cook");
        CookRecord record = current.record();
        record.removeLast();
        current.climb().cutAfter(record.t(record.size() - 1));
        rebase(atNanos);
    }

    /** How many readings of the followed thermometer this cook has. */
    int readings() {
        return cook == null ? 0 : cook.record().size();
    }

    /** What was typed last of the followed thermometer; belongs to this cook. */
    void typed(HandEntry entry) {
        typed = Optional.of(entry);
    }

    private Optional<HandView> hand(Optional<CookStatus> status) {
        Thermometer first = thermometers.first();
        return first.byHand() ? Optional.of(HandView.of(first.name(), typed, status)) : Optional.empty();
    }

    /** Seconds of the cook at an instant on the readings' scale. */
    double timeS(long atNanos) {
        return cook == null ? 0 : (atNanos - cook.originNanos()) / 1e9;
    }

    /** The latest typed reading is none any more. */
    void forgetTyped() {
        typed = Optional.empty();
    }

    /** The last good reading of the followed thermometer in this cook. */
    Optional<CookStatus.Seen> seen() {
        return cook == null ? Optional.empty() : cook.monitor().status().seen();
    }

    /** What was typed last in this cook and not taken back. */
    Optional<HandEntry> typed() {
        return typed;
    }

    /** A new cook, and with it a new afternoon that begins at an instant, or the same one. */
    void beginCook(OptionalLong newAfternoonNanos) {
        typed = Optional.empty();
        cook = null;
        cookNumber++;
        kept.clear();
        fresh.clear();
        acknowledged.clear();
        newAfternoonNanos.ifPresentOrElse(
                afternoon::begin, () -> afternoon.afternoon().forgetThePan());
        heardNanos = OptionalLong.empty();
        outlookT = Double.NEGATIVE_INFINITY;
        news = true;
        Thermometer first = thermometers.first();
        if (first.state() == ProbeState.State.READING || first.state() == ProbeState.State.ENDED) {
            first.becomes(ProbeState.State.WAITING);
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
            boolean byHand = thermometers.first().byHand();
            view.status().ifPresent(byHand ? cook.climb()::addSeen : cook.climb()::add);
        }
        heardNanos = OptionalLong.empty();
        return Optional.of(view);
    }

    KitchenState state() {
        return new KitchenState(
                plan,
                cookNumber,
                Optional.ofNullable(cook).map(Cook::startedAt),
                thermometers.states(),
                view(),
                List.copyOf(kept),
                cook == null ? List.of() : cook.climb().points(),
                afternoon.view());
    }

    CookRecord record() {
        return cook == null ? new CookRecord() : cook.record().copy();
    }

    private Cook startCook(long originNanos) {
        Cook started = Cook.start(
                thermometers.settings(),
                thermometers.trusts(),
                originNanos,
                plan.startedAt().orElseGet(Instant::now));
        cook = started;
        return started;
    }

    private PanView view() {
        ProbeState probe = thermometers.state(thermometers.first());
        if (cook == null) {
            Outlook waiting = thermometers.firstInIce()
                    ? ProbeWords.inIce()
                    : thermometers.first().byHand() ? ProbeWords.waitingForTyped() : ProbeWords.waiting(probe);
            return view(Optional.empty(), waiting, List.of(), List.of());
        }
        CookStatus live = cook.monitor().status();
        boolean gone = probe.state() == ProbeState.State.LOST || probe.state() == ProbeState.State.ENDED;
        CookStatus status = gone ? live.stale() : live;
        List<CookAlarm> alarms = cook.monitor().alarms();
        if (Math.floor(status.t()) > outlookT || !fresh.isEmpty() || gone) {
            outlookT = Math.floor(status.t());
            Outlook told = cook.story().tell(status, alarms);
            outlook = TestSayings.over(told, cook.monitor().tests(), status, alarms);
        }
        Outlook now = outlook.with(afternoon.comingUp(cook.originNanos()));
        Outlook shown = gone ? ProbeWords.gone(probe, now) : now;
        return view(Optional.of(status), shown, alarms, others(cook.monitor()));
    }

    private PanView view(
            Optional<CookStatus> status, Outlook shown, List<CookAlarm> alarms, List<PanView.Other> others) {
        Optional<Cook> now = Optional.ofNullable(cook);
        return new PanView(
                now.map(Cook::startedAt),
                seq,
                status,
                shown,
                alarms,
                heardNanos,
                thermometers.basis(),
                others,
                hand(status),
                thermometers.view(),
                now.map(it -> it.monitor().tests()));
    }

    private List<PanView.Other> others(CookMonitor monitor) {
        return thermometers.others().stream()
                .map(one -> new PanView.Other(
                        one.name(), monitor.otherTemperatureC(one.name()), monitor.otherQuality(one.name())))
                .toList();
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
        Thermometer first = thermometers.first();
        boolean silent = raised && event.alarm().name() == AlarmName.PROBE_SILENT;
        if (silent && first.state() == ProbeState.State.READING && first.becomes(ProbeState.State.SILENT)) {
            tell(first);
        }
    }

    private void tell(Thermometer thermometer) {
        double t = cook == null ? 0 : cook.monitor().timeS();
        add(new KitchenChange.Probe(++seq, t, thermometers.state(thermometer)));
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
