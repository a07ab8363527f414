package spoonfall.fuzz;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import org.junit.jupiter.api.Test;

final class CutTest {
    @Test
    void bytes_chooseFromTheFront_andTheRestIsParsed() {
        Cut cut = new Cut(new byte[] {5, 1, 2, 'a', (byte) 0xff});
        assertThat(cut.<String>oneOf("x", "y", "z")).isEqualTo("z");
        assertThat(cut.nextTwo()).isEqualTo(0x0102);
        assertThat(cut.rest()).containsExactly('a', 0xff);
        assertThat(cut.text()).isEqualTo("a\ufffd");
    }

    @Test
    void nothingLeft_isZerosAndNoText() {
        Cut cut = new Cut(new byte[0]);
        assertThat(cut.next()).isZero();
        assertThat(cut.rest()).isEmpty();
    }

    @Test
    void aComplaintOfSeveralLines_orOfMoreThanAnyoneReads_isAFinding() {
        Must.beOneLine("the file is empty");
        assertThatThrownBy(() -> Must.beOneLine("one\ntwo")).isInstanceOf(AssertionError.class);
        assertThatThrownBy(() -> Must.beOneLine("x".repeat(1001))).isInstanceOf(AssertionError.class);
        assertThatThrownBy(() -> Must.beOneLine(" ")).isInstanceOf(AssertionError.class);
    }
}
