package spoonfall.door;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import java.time.Duration;
import java.util.HashSet;
import java.util.Set;
import org.junit.jupiter.api.Test;

final class PairingDeskTest {
    private static final String WRONG = "AAAA-AAAA";
    private final PairingDesk desk = new PairingDesk();

    private PairingDesk.Outcome enter(String typed, String client, long atS) {
        return desk.enter(typed, client, atS * 1000, role -> {});
    }

    @Test
    void aCode_isOfLettersThatAreNotMistaken_andNeverTheSame() {
        Set<String> seen = new HashSet<>();
        for (int i = 0; i < 1000; i++) {
            String code = desk.open(Role.VIEWER, 0).text();
            assertThat(code).matches("[2-9A-HJKMNP-TV-Z]{8}");
            seen.add(code);
        }
        assertThat(seen).hasSize(1000);
    }

    @Test
    void aCode_worksUntilItsTimeIsUp() {
        String code = desk.open(Role.COOK, 0).shown();
        assertThat(desk.state(0)).isEqualTo(PairingDesk.State.OPEN);
        assertThat(desk.current(PairingDesk.LIFE.toMillis() - 1)).isPresent();
        assertThat(enter(code, "a", PairingDesk.LIFE.toSeconds())).isInstanceOf(PairingDesk.Outcome.Wrong.class);
        assertThat(desk.state(PairingDesk.LIFE.toMillis())).isEqualTo(PairingDesk.State.EXPIRED);
    }

    @Test
    void aCode_givesItsRoleOnce() {
        String code = desk.open(Role.VIEWER, 0).shown();
        assertThat(enter(code, "a", 1)).isEqualTo(new PairingDesk.Outcome.Opened(Role.VIEWER));
        assertThat(enter(code, "a", 2)).isInstanceOf(PairingDesk.Outcome.Wrong.class);
        assertThat(desk.state(2000)).isEqualTo(PairingDesk.State.USED);
    }

    @Test
    void aCodeThatLetsNobodyIn_stillWorks() {
        String code = desk.open(Role.VIEWER, 0).shown();
        assertThatThrownBy(() -> desk.enter(code, "a", 1000, role -> {
                    throw new IllegalArgumentException("there is no room");
                }))
                .hasMessage("there is no room");
        assertThat(desk.state(1000)).isEqualTo(PairingDesk.State.OPEN);
        assertThat(enter(code, "a", 2)).isEqualTo(new PairingDesk.Outcome.Opened(Role.VIEWER));
    }

    @Test
    void aCodeThatWasTakenBack_worksNoMore_andNothingNeverDoes() {
        String code = desk.open(Role.COOK, 0).shown();
        desk.forget();
        for (String typed : new String[] {code, "", "-", "null"}) {
            assertThat(enter(typed, typed, 1)).as(typed).isInstanceOf(PairingDesk.Outcome.Wrong.class);
        }
    }

    @Test
    void aClientThatIsWrong_waitsTwiceAsLongEachTime_whileOthersDoNot() {
        desk.open(Role.COOK, 0);
        long atS = 0;
        for (int wrong = 0; wrong < 3; wrong++) {
            assertThat(enter(WRONG, "a", atS)).isInstanceOf(PairingDesk.Outcome.Wrong.class);
        }
        for (long waitS : new long[] {5, 10, 20, 40}) {
            assertThat(enter(WRONG, "a", atS)).isEqualTo(new PairingDesk.Outcome.Wait(Duration.ofSeconds(waitS)));
            assertThat(enter(WRONG, "a", atS + waitS - 1)).isInstanceOf(PairingDesk.Outcome.Wait.class);
            atS += waitS;
            assertThat(enter(WRONG, "a", atS)).isInstanceOf(PairingDesk.Outcome.Wrong.class);
        }
        String code = desk.open(Role.COOK, atS * 1000).shown();
        assertThat(enter(code, "a", atS)).isInstanceOf(PairingDesk.Outcome.Wait.class);
        assertThat(enter(code, "b", atS)).isInstanceOf(PairingDesk.Outcome.Opened.class);
    }

    @Test
    void aCode_diesOfTenWrongTries_fromWhateverAddresses() {
        String code = desk.open(Role.COOK, 0).shown();
        for (int wrong = 0; wrong < 10; wrong++) {
            assertThat(enter(WRONG, "client " + wrong, 0)).isInstanceOf(PairingDesk.Outcome.Wrong.class);
        }
        assertThat(desk.state(0)).isEqualTo(PairingDesk.State.GUESSED);
        assertThat(enter(code, "the cook", 0)).isInstanceOf(PairingDesk.Outcome.Wrong.class);
    }

    @Test
    void manyAddressesTogether_areHeldUpToo_andForgottenInTime() {
        int tries = 0;
        for (int client = 0; client < 10_000; client++) {
            desk.open(Role.COOK, 0);
            if (enter(WRONG, "client " + client, 0) instanceof PairingDesk.Outcome.Wrong) {
                tries++;
            }
        }
        assertThat(tries).isEqualTo(12);
        String code = desk.open(Role.COOK, 600_000).shown();
        assertThat(enter(code, "the cook", 600)).isInstanceOf(PairingDesk.Outcome.Opened.class);
    }

    @Test
    void whatIsPrintedOfACode_doesNotTellIt() {
        PairingCode code = desk.open(Role.COOK, 0);
        assertThat(code.toString()).doesNotContain(code.text()).isEqualTo("a code for a cook");
    }
}
