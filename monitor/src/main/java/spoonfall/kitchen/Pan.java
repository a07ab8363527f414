package spoonfall.kitchen;

import com.fasterxml.jackson.databind.node.ObjectNode;
import java.time.Instant;
import java.util.ArrayDeque;
import java.util.ArrayList;
import java.util.Deque;
import java.util.EnumSet;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Objects;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.OptionalLong;
import java.util.Set;
import java.util.function.Function;
import org.jspecify.annotations.Nullable;
import org.slf4j.Logger;
import org.slf4j.LoggerFactory;
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
import spoonfall.cook.Unrecorded;
import spoonfall.log.CookBasis;
import spoonfall.log.CookInput;
import spoonfall.log.CookJournal;
import spoonfall.log.CookJson;
import spoonfall.log.CookNote;
import spoonfall.log.CookRecord;
import spoonfall.log.UnfinishedCook;
import spoonfall.log.memory.BatchMemory;
import spoonfall.log.planned.PlannedBatch;
import spoonfall.probe.Quality;
import spoonfall.probe.Reading;
import spoonfall.words.Outlook;
import spoonfall.words.ServiceWords;
import spoonfall.words.TestSayings;

/**
 * One pan on the hob and what is known of it: the cook's monitor with its story, record and latest changes.
 * Used by the kitchen's thread alone.
 */
final class Pan {
    private static final int CHANGES_KEPT = 200;
    private static final Logger LOG = LoggerFactory.getLogger(Pan.class);

    private final KitchenPlan plan;
    private final KitchenCounts counts;
    private final Deque<KitchenChange> kept = new ArrayDeque<>();
    private final List<KitchenChange> fresh = new ArrayList<>();
    private final Thermometers thermometers;
    private final PanLog log;
    private final Set<AlarmName> acknowledged = EnumSet.noneOf(AlarmName.class);
    private final AfternoonBook afternoon;
    private final PlannedCook planned = new PlannedCook();
    private long seq;
    private int cookNumber = 1;
    private Optional<Unrecorded> trouble = Optional.empty();
    private @Nullable Cook cook;
    private boolean news = true;
    private OptionalLong heardNanos = OptionalLong.empty();
    private final Map<String, Double> remindedT = new HashMap<>();
    private final PanNotes notes = new PanNotes();
    private final TypedBook typed = new TypedBook();
    private long lastViewNanos = System.nanoTime();
    private Outlook outlook;
    private double outlookT = Double.NEGATIVE_INFINITY;

    Pan(KitchenPlan plan, Thermometers thermometers, KitchenCounts counts, CookJournal journal, long originNanos) {
        this.plan = plan;
        log = new PanLog(plan, thermometers, journal);
        this.counts = counts;
        this.thermometers = thermometers;
        afternoon = new AfternoonBook(plan, originNanos, new AfternoonDiary(journal.afternoon(), plan));
        outlook = ProbeWords.waiting(thermometers.state(thermometers.first()));
    }

    /** Takes an uncorrected reading of one of the thermometers. */
    void accept(Thermometer thermometer, Reading raw, long atNanos) {
        thermometers.heard(raw);
        Reading reading = thermometer.corrected(raw);
        if (thermometer == thermometers.first()) {
            if (!thermometers.firstInIce()) {
                follow(thermometer, raw, reading);
            }
        } else if (cook != null) {
            cook.monitor().compare(reading);
            log.heard(cook, thermometer, raw);
        }
        if (reading.quality() == Quality.GOOD && thermometer.becomes(ProbeState.State.READING)) {
            tell(thermometer);
        }
        heardNanos = OptionalLong.of(atNanos);
        news = true;
    }

    private void follow(Thermometer thermometer, Reading raw, Reading reading) {
        Cook current = cook == null ? startCook(reading.atNanos()) : cook;
        List<CookEvent> events = current.accept(reading);
        log.heard(current, thermometer, raw); // before what came of it, which must never be in the record alone
        handle(events);
        followAfternoon(reading.atNanos());
    }

    /** The afternoon of this pan. */
    AfternoonBook afternoon() {
        return afternoon;
    }

    /** Somebody says what batch is in the pan, or comes into it next; empty for none. */
    void plan(Optional<PlannedBatch> batch) {
        boolean over = cook == null || cook.monitor().status().stage() == Stage.OFF_THE_HEAT;
        boolean next = batch.isPresent() ? over : cook == null || planned.hasNext();
        planned.say(batch, next);
        if (cook != null && !next) {
            planned.prior().ifPresent(cook.monitor()::expect);
            log.said(cook, Words.PLAN, PlannedBatch.detail(batch));
        }
    }

    /** Somebody says how many jars this cook filled. */
    void filled(int jars) {
        planned.filled(jars);
        if (cook != null) {
            log.said(cook, Words.FILLED, CookJson.object().put("jars", jars));
        }
    }

    /** What was planned, and what came of it. */
    PlanState planState() {
        return planned.state(Optional.ofNullable(cook).map(Cook::record), thermometers.settings(), status());
    }

    private void followAfternoon(long atNanos) {
        for (Reminder reminder : afternoon.follow(atNanos, status())) {
            double laterS = cook == null ? 0 : afternoon.secondsAt(cook.originNanos());
            boolean said = remindedT.getOrDefault(reminder.name(), Double.NEGATIVE_INFINITY) > timeS(atNanos) - 60;
            if (!log.again() && !said) {
                say(reminder.name(), reminder.marked(laterS));
            }
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
            hearOfTheRecord(cook, atNanos);
            log.alive(cook);
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

    private void hearOfTheRecord(Cook current, long atNanos) {
        Optional<Unrecorded> now = log.trouble();
        if (!now.equals(trouble)) {
            trouble = now;
            List<CookEvent> events = current.monitor().recording(now, atNanos);
            ObjectNode detail = CookJson.object();
            now.ifPresent(one -> detail.put("why", one.why()).put("act", one.act()));
            log.said(current, Words.RECORDING, detail);
            handle(events);
        }
    }

    Optional<CookAlarm> acknowledge(String id, long atNanos) {
        ObjectNode detail = CookJson.object().put("id", id);
        Optional<CookAlarm> known = answer(Words.ACKNOWLEDGE, detail, monitor -> monitor.acknowledge(id, atNanos));
        known.ifPresent(alarm -> acknowledged.add(alarm.name()));
        return known;
    }

    Optional<CookAlarm> shelve(String id, int minutes, long atNanos) {
        ObjectNode detail = CookJson.object().put("id", id).put("minutes", minutes);
        return answer(Words.SHELVE, detail, monitor -> monitor.shelve(id, minutes, atNanos));
    }

    Optional<CookAlarm> unshelve(String id, long atNanos) {
        ObjectNode detail = CookJson.object().put("id", id);
        return answer(Words.UNSHELVE, detail, monitor -> monitor.unshelve(id, atNanos));
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
            List<CookEvent> events = cook.monitor().say(word, atNanos);
            log.said(cook, Words.SET_TEST, Words.detail(word));
            handle(events);
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

    /** The cook goes on with the one that the record keeps under that number. */
    void recooks(long of) {
        if (cook == null) {
            throw new Refusal("no cook has begun yet; put the thermometer into the pan first");
        }
        log.said(cook, Words.RECOOK, BatchMemory.recook(of));
    }

    private Optional<CookAlarm> answer(
            String kind, ObjectNode detail, Function<CookMonitor, Optional<CookMonitor.Answer>> word) {
        if (cook == null) {
            return Optional.empty();
        }
        Cook current = cook;
        return word.apply(current.monitor()).map(done -> {
            log.said(current, kind, detail);
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
        CookBasis basis = thermometers.cookBasis();
        rebase(basis, atNanos);
        if (cook != null) {
            log.said(cook, Words.BASIS, CookJson.basis(basis));
        }
    }

    private void rebase(CookBasis basis, long atNanos) {
        outlookT = Double.NEGATIVE_INFINITY;
        news = true;
        trouble = Optional.empty();
        if (cook == null) {
            return;
        }
        List<CookAlarm> before = cook.monitor().alarms();
        Cook again =
                cook.again(basis.settings(), thermometers.first().name(), basis.trusts(), atNanos, planned.prior());
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

    /** The first cook has that number, for others came before it. */
    void number(int number) {
        cookNumber = number;
    }

    /**
     * Goes on with a cook that an earlier run left: all that went into it is gone through again, so that everything
     * stands as it stood.
     *
     * @param atNanos now, on the readings' scale
     */
    void resume(UnfinishedCook left, long atNanos) {
        CookBasis asked = thermometers.cookBasis();
        Resumption resumption = new Resumption(left, plan, thermometers, atNanos);
        cookNumber = left.header().number();
        Cook begun = resumption.cook();
        cook = begun;
        log.resumed(left, begun, resumption.corrections());
        notes.recall(left.notes());
        afternoon.goOn(begun.originNanos(), begun.startedAt());
        left.inputs().forEach(input -> takeAgain(resumption, input));
        Cook current = cook;
        long leftNanos = current.nanosAt(left.aliveMillis());
        handle(current.monitor().advanceTo(leftNanos));
        log.caughtUp();
        if (resumption.askedOtherwise()) {
            thermometers.restore(asked);
        }
        if (!thermometers.cookBasis().equals(resumption.basis())) {
            rebase(leftNanos);
        }
        comeBack(atNanos);
    }

    /** The machine slept until now: nobody watched. */
    void slept(long atNanos) {
        LOG.warn("{}: this computer slept, and nobody watched the pan meanwhile", plan.pan());
        comeBack(atNanos);
    }

    /** Somebody set the wall clock: what is shown goes by the new one. */
    void clockSet(long byMillis) {
        afternoon.clockSet(byMillis);
        Cook current = cook;
        if (current != null && plan.startedAt().isEmpty()) {
            cook = current.withClockSet(byMillis);
            log.said(current, Words.CLOCK_SET, CookJson.object().put("byMillis", byMillis));
        }
        say("clock-set", ServiceWords.clockSet(byMillis));
    }

    /** So many readings could not be taken. */
    void dropped(long readings) {
        LOG.warn("{}: {} readings were lost, for more came than could be taken", plan.pan(), readings);
        say(
                "readings-lost",
                ServiceWords.dropped(readings, cook == null ? 0 : cook.monitor().timeS()));
    }

    private void say(String name, String text) {
        double t = cook == null ? 0 : cook.monitor().timeS();
        if (cook != null) {
            ObjectNode detail = CookJson.object().put("t", t).put("name", name).put("text", text);
            log.said(cook, Words.REMINDED, detail);
        }
        add(new KitchenChange.Reminded(++seq, t, name, text));
    }

    private void remindAgain(ObjectNode detail) {
        double t = CookJson.number(detail, "t");
        String name = CookJson.text(detail, "name");
        remindedT.put(name, t);
        add(new KitchenChange.Reminded(++seq, t, name, CookJson.text(detail, "text")));
    }

    /** Lets a cook be that cannot be gone on with; its record stays as it is. */
    void leave() {
        cook = null;
        log.caughtUp();
    }

    /** Whether the cook that was left had come off the heat, long enough ago to be over. */
    boolean over(UnfinishedCook left) {
        return cook != null && Resumption.over(left, cook.monitor().status().stage());
    }

    private void comeBack(long atNanos) {
        Cook current = cook;
        if (current != null) {
            ObjectNode left = CookJson.object().put("leftMillis", current.takenMillis());
            List<CookEvent> events = current.monitor().comeBack(atNanos);
            log.said(current, Words.CAME_BACK, left);
            handle(events);
        }
    }

    private void takeAgain(Resumption resumption, CookInput input) {
        Cook current = cook;
        if (current == null) {
            return;
        }
        long atNanos = current.nanosAt(input.takenMillis());
        if (input instanceof CookInput.Heard heard) {
            if (heard.probe().equals(thermometers.first().name())) {
                handle(current.accept(resumption.reading(heard, atNanos)));
                followAfternoon(atNanos);
            } else {
                handle(current.monitor().advanceTo(atNanos));
                current.monitor().compare(resumption.reading(heard, current.nanosAt(heard.atMillis())));
            }
        } else if (input instanceof CookInput.Word word) {
            sayAgain(resumption, current, word, atNanos);
        }
    }

    private void sayAgain(Resumption resumption, Cook current, CookInput.Word word, long atNanos) {
        ObjectNode detail = word.detail();
        switch (word.kind()) {
            case Words.ACKNOWLEDGE -> acknowledge(CookJson.text(detail, "id"), atNanos);
            case Words.SHELVE -> shelve(CookJson.text(detail, "id"), (int) CookJson.number(detail, "minutes"), atNanos);
            case Words.UNSHELVE -> unshelve(CookJson.text(detail, "id"), atNanos);
            case Words.BASIS -> rebase(resumption.basis(CookJson.basis(detail)), atNanos);
            case Words.CORRECTION -> resumption.correct(CookJson.text(detail, "probe"), CookJson.correction(detail));
            case Words.SET_TEST -> say(Words.testWord(detail), atNanos);
            case Words.AFTERNOON -> sayOfOld(AfternoonWord.of(detail), atNanos);
            case Words.PLAN -> {
                planned.say(PlannedBatch.of(detail), false);
                planned.prior().ifPresent(current.monitor()::expect);
            }
            case Words.FILLED -> planned.filled((int) CookJson.number(detail, "jars"));
            case Words.TYPED -> typed.took(Words.entry(detail, timeS(atNanos), atNanos));
            case Words.TAKEN_BACK -> {
                withoutLast(current);
                typed.tookBack(detail.path("id").asText());
                rebase(resumption.basis(), atNanos);
            }
            case Words.REMINDED -> remindAgain(detail);
            case Words.CLOCK_SET -> cook = current.withClockSet((long) CookJson.number(detail, "byMillis"));
            case Words.CAME_BACK -> {
                if (detail.has("leftMillis")) { // it was watched for longer than it was read
                    long leftMillis = (long) CookJson.number(detail, "leftMillis");
                    handle(current.monitor().advanceTo(current.nanosAt(leftMillis)));
                }
                handle(current.monitor().comeBack(atNanos));
            }
            case Words.RECOOK -> {
                // it moves nothing in this cook
            }
            case Words.RECORDING -> {
                trouble = Resumption.unrecorded(detail);
                handle(current.monitor().recording(trouble, atNanos));
            }
            default -> resumption.unknown(word.kind());
        }
    }

    /** A word on the afternoon, of a time when cooks kept them: it goes into the diary. */
    private void sayOfOld(AfternoonWord word, long atNanos) {
        if (!afternoon.recalled()) {
            try {
                afternoon.say(word, atNanos);
            } catch (IllegalArgumentException e) {
                LOG.warn("a word on the afternoon is passed over: {}", e.getMessage());
            }
        }
    }

    /** The latest reading of the followed thermometer, which somebody typed, was a mistake: the cook is gone through again. */
    void takeBackLast(String id, long atNanos) {
        Cook current = Objects.requireNonNull(cook, "nothing was read in this cook");
        withoutLast(current);
        typed.tookBack(id);
        log.said(current, Words.TAKEN_BACK, CookJson.object().put("id", id));
        rebase(atNanos);
    }

    private static void withoutLast(Cook current) {
        CookRecord record = current.record();
        record.removeLast();
        current.climb().cutAfter(record.t(record.size() - 1));
    }

    /** How many readings of the followed thermometer this cook has. */
    int readings() {
        return cook == null ? 0 : cook.record().size();
    }

    /** A reading of the followed thermometer was typed, and taken; it belongs to this cook. */
    HandAnswer typed(HandEntry entry) {
        if (cook != null) {
            log.said(cook, Words.TYPED, Words.detail(entry));
        }
        return typed.took(entry);
    }

    private Optional<HandView> hand(Optional<CookStatus> status) {
        Thermometer first = thermometers.first();
        return first.byHand() ? Optional.of(HandView.of(first.name(), typed.last(), status)) : Optional.empty();
    }

    /** Seconds of the cook at an instant on the readings' scale. */
    double timeS(long atNanos) {
        return cook == null ? 0 : (atNanos - cook.originNanos()) / 1e9;
    }

    /** The last good reading of the followed thermometer in this cook. */
    Optional<CookStatus.Seen> seen() {
        return cook == null ? Optional.empty() : cook.monitor().status().seen();
    }

    /** Somebody writes a line of the cook; one of that key that is there already is harmless. */
    CookNote write(String key, String text, long atNanos) {
        Cook current = cook;
        if (current == null) {
            throw PanNotes.nothingToWriteOf();
        }
        return notes.named(key).orElseGet(() -> {
            CookNote note = notes.add(key, text, Math.max(0, current.millisAt(atNanos)));
            log.noted(note);
            add(new KitchenChange.Noted(++seq, note));
            return note;
        });
    }

    /** What somebody wrote of this cook, in order. */
    List<CookNote> notes() {
        return notes.all();
    }

    /** What was typed. */
    TypedBook typed() {
        return typed;
    }

    /** A new cook, and with it a new afternoon that begins at an instant, or the same one. */
    void beginCook(OptionalLong newAfternoonNanos) {
        endCook();
        newAfternoonNanos.ifPresentOrElse(afternoon::begin, afternoon::forgetThePan);
    }

    /** A cook is over, or cannot be gone on with; an afternoon that somebody is in the middle of goes on. */
    void nextCook(long atNanos) {
        endCook();
        if (!afternoon.underWay()) {
            afternoon.begin(atNanos);
        }
    }

    private void endCook() {
        typed.forgetLast();
        if (cook != null) {
            log.ended(cook);
        }
        cook = null;
        cookNumber++;
        kept.clear();
        fresh.clear();
        acknowledged.clear();
        planned.end();
        notes.clear();
        remindedT.clear();
        heardNanos = OptionalLong.empty();
        outlookT = Double.NEGATIVE_INFINITY;
        news = true;
        Thermometer first = thermometers.first();
        if (first.state() == ProbeState.State.READING || first.state() == ProbeState.State.ENDED) {
            first.becomes(ProbeState.State.WAITING);
        }
    }

    List<KitchenChange> takeChanges() {
        log.settle();
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
        log.settle();
        return new KitchenState(
                plan,
                cookNumber,
                Optional.ofNullable(cook).map(Cook::startedAt),
                thermometers.states(),
                view(),
                List.copyOf(kept),
                cook == null ? List.of() : cook.climb().points(),
                notes(),
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
        log.began(cookNumber, started);
        planned.begin().ifPresent(batch -> log.said(started, Words.PLAN, PlannedBatch.detail(Optional.of(batch))));
        planned.prior().ifPresent(started.monitor()::expect);
        trouble = Optional.empty();
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
            if (event instanceof CookEvent.StatusTaken taken) {
                if (log.again() && cook != null) {
                    if (thermometers.first().byHand()) {
                        cook.climb().addSeen(taken.status());
                    } else {
                        cook.climb().add(taken.status());
                    }
                    cook.story().tell(taken.status(), cook.monitor().alarms());
                }
                continue;
            }
            add(new KitchenChange.Cook(++seq, event));
            log.happened(event);
            if (event instanceof CookEvent.AlarmChanged alarm && !log.again()) {
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
