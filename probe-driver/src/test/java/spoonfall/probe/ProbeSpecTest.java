package spoonfall.probe;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

final class ProbeSpecTest {
    @Test
    void aSpec_isReadIntoItsParts() {
        ProbeSpec spec = ProbeSpec.parse("text:/dev/ttyUSB0,baud=115200,column=2,unit=F");
        assertThat(spec.kind()).isEqualTo(ProbeSpec.Kind.TEXT);
        assertThat(spec.place()).isEqualTo("/dev/ttyUSB0");
        assertThat(spec.options()).containsEntry("baud", "115200").containsEntry("column", "2");
    }

    @ParameterizedTest
    @CsvSource(
            delimiter = '|',
            value = {
                "/dev/ttyUSB0|auto:/dev/ttyUSB0",
                "usb:/dev/ttyUSB0|unknown kind of probe \"usb\"; it can be auto, text, json, modbus, scpi, trace",
                "text:|a probe needs a port",
                "text:/dev/ttyUSB0,baud=fast|baud must be a whole number, not \"fast\"",
                "text:/dev/ttyUSB0,baud=1|baud must be 50 to 4000000",
                "text:/dev/ttyUSB0,bauds=9600|no option \"bauds\"; it has baud, databits",
                "text:/dev/ttyUSB0,parity=maybe|parity must be none, odd, even, mark or space",
                "text:/dev/ttyUSB0,stopbits=3|stopbits must be 1, 1.5 or 2",
                "text:/dev/ttyUSB0,unit=R|unit must be C, F or K",
                "text:/dev/ttyUSB0,decimal=dot|decimal must be point or comma",
                "text:/dev/ttyUSB0,baud|\"baud\" is not an option",
                "text:/dev/ttyUSB0,baud=9600,baud=19200|option baud is given twice",
                "text:/dev/ttyUSB0,column=|column must be a number from 1 or a name, not \"\"",
                "text:/dev/ttyUSB0,column=0|column must be a number from 1 or a name, not \"0\"",
                "json:/dev/ttyUSB0,field=|needs the field",
                "json:/dev/ttyUSB0|needs the field",
                "modbus:/dev/ttyUSB0|needs the register of the temperature",
                "modbus:/dev/ttyUSB0,register=70000|register must be 0 to 65535",
                "modbus:/dev/ttyUSB0,register=0,id=0|id must be 1 to 247",
                "modbus:/dev/ttyUSB0,register=0,function=6|function must be 3",
                "modbus:/dev/ttyUSB0,register=0,type=int8|type must be int16, uint16, int32, uint32, float",
                "modbus:/dev/ttyUSB0,register=0,words=middle|words must be high or low",
                "trace:cook.csv,baud=9600|it has none"
            })
    void aWrongSpec_isNamedWithTheWayOut(String spec, String message) {
        assertThatThrownBy(() -> ProbeSpec.parse(spec))
                .isInstanceOf(IllegalArgumentException.class)
                .hasMessageContaining(message)
                .hasMessageNotContaining("\n");
    }
}
