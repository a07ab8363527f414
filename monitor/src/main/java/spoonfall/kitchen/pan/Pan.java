package spoonfall.kitchen.pan;

import com.fasterxml.jackson.databind.node.ObjectNode;
import java.time.Instant;
import java.util.List;
import java.util.Optional;
import java.util.OptionalLong;
import org.slf4j.Logger;
import org.slf4j.LoggerFactory;
import spoonfall.afternoon.Reminder;
import spoonfall.cook.CookAlarm;
import spoonfall.cook.CookEvent;
import spoonfall.cook.CookStatus;
import spoonfall.cook.TestWord;
import spoonfall.cook.Unrecorded;
import spoonfall.kitchen.afternoon.AfternoonBook;
import spoonfall.kitchen.afternoon.AfternoonDiary;
import spoonfall.kitchen.ask.Refusal;
import spoonfall.kitchen.cook.AlarmAnswers;
import spoonfall.kitchen.cook.Cook;
import spoonfall.kitchen.cook.PanCook;
import spoonfall.kitchen.cook.PanLog;
import spoonfall.kitchen.cook.PanNews;
import spoonfall.kitchen.cook.PanNotes;
import spoonfall.kitchen.cook.PanPlan;
import spoonfall.kitchen.cook.PanTeller;
import spoonfall.kitchen.cook.Words;
import spoonfall.kitchen.plan.KitchenPlan;
import spoonfall.kitchen.plan.PlanDiary;
import spoonfall.kitchen.thermometer.ProbeState;
import spoonfall.kitchen.thermometer.Thermometer;
import spoonfall.kitchen.thermometer.ThermometerCheck;
import spoonfall.kitchen.thermometer.Thermometers;
import spoonfall.kitchen.told.KitchenChange;
import spoonfall.kitchen.told.KitchenCounts;
import spoonfall.kitchen.told.KitchenState;
import spoonfall.kitchen.told.PanView;
import spoonfall.kitchen.typed.HandAnswer;
import spoonfall.kitchen.typed.HandEntry;
import spoonfall.kitchen.typed.TypedBook;
import spoonfall.log.CookBasis;
import spoonfall.log.CookJournal;
import spoonfall.log.CookJson;
import spoonfall.log.CookRecord;
import spoonfall.log.memory.BatchMemory;
import spoonfall.probe.Quality;
import spoonfall.probe.Reading;
import spoonfall.words.ServiceWords;

/**
 * One pan on the hob and what is known of it: the cook's monitor with its story, record and latest changes.
 * Used by the kitchen's thread alone.
 */
public final class Pan {
    private static final Logger LOG = LoggerFactory.getLogger(Pan.class);

    private final KitchenPlan plan;
    private final Thermometers thermometers;
    private final ThermometerCheck check;
    private final PanLog log;
    private final PanCook cook;
    private final PanNews news = new PanNews();
    private final AfternoonBook afternoon;
    private final PanPlan batch;
    private final PanNotes notes;
    private final TypedBook typed = new TypedBook();
    private final PanTeller teller;
    private final AlarmAnswers alarms;
    private final PanTests tests;
    private final PanPicture picture;
    private int cookNumber = 1;
    private Optional<Unrecorded> trouble = Optional.empty();

    /** A pan in which no cook has begun. */
    public Pan(
            KitchenPlan plan,
            Thermometers thermometers,
            ThermometerCheck check,
            KitchenCounts counts,
            CookJournal journal,
            long originNanos) {
        this.plan = plan;
        this.thermometers = thermometers;
        this.check = check;
        cook = new PanCook(thermometers);
        log = new PanLog(plan, thermometers, journal);
        afternoon = new AfternoonBook(plan, originNanos, new AfternoonDiary(journal.afternoon(), plan), cook);
        batch = new PanPlan(cook, log, thermometers, new PlanDiary(journal.plan()));
        notes = new PanNotes(cook, log, news);
        teller = new PanTeller(cook, log, news, thermometers, counts);
        alarms = new AlarmAnswers(cook, log, news, teller);
        tests = new PanTests(cook, log, teller, afternoon);
        picture = new PanPicture(cook, news, thermometers, check, afternoon, typed);
    }

    /** The afternoon of this pan. */
    public AfternoonBook afternoon() {
        return afternoon;
    }

    /** The cook that is in it. */
    public PanCook cook() {
        return cook;
    }

    /** What writes its cook down. */
    public PanLog log() {
        return log;
    }

    /** What tells of it. */
    public PanTeller teller() {
        return teller;
    }

    /** Its alarms. */
    public AlarmAnswers alarms() {
        return alarms;
    }

    /** The batch that is in it. */
    public PanPlan batch() {
        return batch;
    }

    /** What was typed. */
    public TypedBook typed() {
        return typed;
    }

    /** Takes an uncorrected reading of one of the thermometers. */
    public void accept(Thermometer thermometer, Reading raw, long atNanos) {
        check.heard(raw);
        Reading reading = thermometer.corrected(raw);
        if (thermometer == thermometers.first()) {
            if (!check.firstInIce()) {
                follow(thermometer, raw, reading);
            }
        } else {
            cook.now().ifPresent(current -> {
                current.monitor().compare(reading);
                log.heard(current, thermometer, raw);
            });
        }
        if (reading.quality() == Quality.GOOD && thermometer.becomes(ProbeState.State.READING)) {
            teller.tell(thermometer);
        }
        news.heard(atNanos);
    }

    private void follow(Thermometer thermometer, Reading raw, Reading reading) {
        Cook current = cook.now().orElseGet(() -> startCook(reading.atNanos()));
        List<CookEvent> events = current.accept(reading);
        log.heard(current, thermometer, raw); // before what came of it, which must never be in the record alone
        teller.happened(events);
        followAfternoon(reading.atNanos());
    }

    private Cook startCook(long originNanos) {
        Instant startedAt = plan.startedAt().orElseGet(Instant::now);
        Cook started = Cook.start(thermometers.settings(), thermometers.trusts(), originNanos, startedAt);
        cook.is(started);
        log.began(cookNumber, started);
        batch.begin(started);
        trouble = Optional.empty();
        return started;
    }

    /** Time passes. */
    public void tick(long atNanos) {
        if (thermometers.first().state() != ProbeState.State.ENDED) {
            cook.now().ifPresent(current -> tick(current, atNanos));
        }
        followAfternoon(atNanos);
        news.passTime();
    }

    private void tick(Cook current, long atNanos) {
        teller.happened(current.monitor().advanceTo(atNanos));
        hearOfTheRecord(current, atNanos);
        log.alive(current);
        for (Thermometer other : thermometers.others()) {
            boolean silent = current.monitor().otherQuality(other.name()) == Quality.SILENT;
            if (silent && other.state() == ProbeState.State.READING) {
                becomes(other, ProbeState.State.SILENT, "");
            }
        }
    }

    private void hearOfTheRecord(Cook current, long atNanos) {
        Optional<Unrecorded> now = log.trouble();
        if (!now.equals(trouble)) {
            ObjectNode detail = CookJson.object();
            now.ifPresent(one -> detail.put("why", one.why()).put("act", one.act()));
            log.said(current, Words.RECORDING, detail);
            recorded(now, current, atNanos);
        }
    }

    /** Why the cook is not written down from now on; empty if it is. */
    public void recorded(Optional<Unrecorded> now, Cook current, long atNanos) {
        trouble = now;
        teller.happened(current.monitor().recording(now, atNanos));
    }

    /** The afternoon goes on by what the pan does. */
    public void followAfternoon(long atNanos) {
        for (Reminder reminder : afternoon.follow(atNanos)) {
            double laterS = cook.now()
                    .map(begun -> afternoon.secondsAt(begun.originNanos()))
                    .orElse(0.0);
            teller.remind(reminder, laterS, cook.timeS(atNanos));
        }
    }

    /** A thermometer is otherwise from now on. */
    public void becomes(Thermometer thermometer, ProbeState.State state, String detail) {
        if (thermometer.becomes(state, detail)) {
            teller.tell(thermometer);
        }
    }

    /** Whether syrup boils in it: no moment to take the thermometer out. */
    public boolean cooking() {
        return cook.status().filter(status -> status.stage().boiling()).isPresent();
    }

    /** Somebody says something about a set test. */
    public void say(TestWord word, long atNanos) {
        tests.say(word, atNanos);
        picture.sayAnew();
    }

    /** The cook goes on with the one that the record keeps under that number. */
    public void recooks(long of) {
        Cook current = cook.now()
                .orElseThrow(() -> new Refusal("no cook has begun yet; put the thermometer into the pan first"));
        log.said(current, Words.RECOOK, BatchMemory.recook(of));
    }

    /** What the cook is measured against has changed: it is gone through again, so that nothing of it is lost. */
    public void rebase(long atNanos) {
        CookBasis basis = thermometers.cookBasis();
        rebase(basis, atNanos);
        cook.now().ifPresent(current -> log.said(current, Words.BASIS, CookJson.basis(basis)));
    }

    /** The same, measured against that from now on. */
    public void rebase(CookBasis basis, long atNanos) {
        picture.sayAnew();
        trouble = Optional.empty();
        cook.now().ifPresent(current -> {
            List<CookAlarm> before = current.monitor().alarms();
            String followed = thermometers.first().name();
            Cook again = current.again(
                    basis.settings(),
                    followed,
                    basis.trusts(),
                    atNanos,
                    batch.plans().prior());
            cook.is(again);
            alarms.carryOver(before, again.monitor(), atNanos);
        });
    }

    /** The first cook has that number, for others came before it. */
    public void number(int number) {
        cookNumber = number;
    }

    /** Somebody set the wall clock: what is shown goes by the new one. */
    public void clockSet(long byMillis) {
        afternoon.clockSet(byMillis);
        if (plan.startedAt().isEmpty()) {
            cook.now().ifPresent(current -> {
                cook.is(current.withClockSet(byMillis));
                log.said(current, Words.CLOCK_SET, CookJson.object().put("byMillis", byMillis));
            });
        }
        teller.say("clock-set", ServiceWords.clockSet(byMillis));
    }

    /** So many readings could not be taken. */
    public void dropped(long readings) {
        LOG.warn("{}: {} readings were lost, for more came than could be taken", plan.pan(), readings);
        teller.say("readings-lost", ServiceWords.dropped(readings, cook.watchedS()));
    }

    /** How many readings of the followed thermometer this cook has. */
    public int readings() {
        return cook.now().map(begun -> begun.record().size()).orElse(0);
    }

    /** A reading of the followed thermometer was typed, and taken; it belongs to this cook. */
    public HandAnswer typed(HandEntry entry) {
        cook.now().ifPresent(current -> log.said(current, Words.TYPED, Words.detail(entry)));
        return typed.took(entry);
    }

    /** The latest reading of the followed thermometer, which somebody typed, was a mistake: the cook is gone through again. */
    public void takeBackLast(String id, long atNanos) {
        Cook current = cook.now().orElseThrow(() -> new IllegalStateException("nothing was read in this cook"));
        current.withoutLast();
        typed.tookBack(id);
        log.said(current, Words.TAKEN_BACK, CookJson.object().put("id", id));
        rebase(atNanos);
    }

    /** Seconds of the cook at an instant on the readings' scale. */
    public double timeS(long atNanos) {
        return cook.timeS(atNanos);
    }

    /** The last good reading of the followed thermometer in this cook. */
    public Optional<CookStatus.Seen> seen() {
        return cook.status().flatMap(CookStatus::seen);
    }

    /** What somebody wrote of this cook. */
    public PanNotes notes() {
        return notes;
    }

    /** A new cook, and with it a new afternoon that begins at an instant, or the same one. */
    void beginCook(OptionalLong newAfternoonNanos) {
        endCook();
        newAfternoonNanos.ifPresentOrElse(afternoon::begin, afternoon::forgetThePan);
    }

    /** The cook in it, if there is one, is over. */
    public void endCook() {
        typed.forgetLast();
        cook.now().ifPresent(log::ended);
        cook.over();
        cookNumber++;
        news.clear();
        alarms.clear();
        batch.plans().end();
        notes.clear();
        teller.clear();
        picture.sayAnew();
        Thermometer first = thermometers.first();
        if (first.state() == ProbeState.State.READING || first.state() == ProbeState.State.ENDED) {
            first.becomes(ProbeState.State.WAITING);
        }
    }

    /**
     * What nobody was told yet; it is written down first. How the afternoon stands is told if that is news: such changes are many, and
     * only the newest counts, so that none is kept.
     */
    List<KitchenChange> takeChanges() {
        afternoon.news().ifPresent(view -> news.addPassing(seq -> new KitchenChange.Afternoon(seq, view)));
        log.settle();
        return news.take();
    }

    /** The newest view, if there is anything new to see. */
    Optional<PanView> takeView() {
        return picture.take();
    }

    /** All that a page needs to begin with. */
    KitchenState state() {
        log.settle();
        Optional<Cook> now = cook.now();
        return new KitchenState(
                plan,
                cookNumber,
                now.map(Cook::startedAt),
                thermometers.states(),
                picture.view(),
                news.latest(),
                now.map(begun -> begun.climb().points()).orElse(List.of()),
                notes.all(),
                afternoon.view());
    }

    /** The readings of this cook so far. */
    CookRecord record() {
        return cook.now().map(begun -> begun.record().copy()).orElseGet(CookRecord::new);
    }
}
