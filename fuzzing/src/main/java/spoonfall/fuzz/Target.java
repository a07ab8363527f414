package spoonfall.fuzz;

import java.util.Locale;
import java.util.function.Consumer;
import spoonfall.kitchen.file.TomlFuzz;
import spoonfall.log.RecordFuzz;
import spoonfall.probe.line.LinesFuzz;
import spoonfall.probe.modbus.FramesFuzz;
import spoonfall.probe.scpi.ScpiFuzz;
import spoonfall.probe.trace.TraceFuzz;
import spoonfall.web.ServiceFuzz;

/** What is tried: one of each parser. */
enum Target {
    /** Lines of text from a thermometer. */
    TEXT(LinesFuzz::text),
    /** Lines of JSON from a thermometer. */
    JSON(LinesFuzz::json),
    /** Finding out which kind of lines a device sends. */
    RECOGNISER(LinesFuzz::recogniser),
    /** Frames of Modbus RTU. */
    MODBUS(FramesFuzz::frames),
    /** Answers to SCPI queries. */
    SCPI(ScpiFuzz::answers),
    /** Traces with their metadata, as {@code replay} and {@code log import} read them. */
    TRACE(TraceFuzz::trace),
    /** Kitchen files. */
    KITCHEN_FILE(TomlFuzz::kitchenFile),
    /** Batch notes. */
    BATCH_NOTES(TomlFuzz::batchNotes),
    /** What is typed: quantities, temperatures, probes, jars. */
    TYPED(TypedFuzz::typed),
    /** What the record says of a cook. */
    RECORD(RecordFuzz::header),
    /** The book of calibrations. */
    CALIBRATIONS(RecordFuzz::calibrations),
    /** Calls of the service. */
    CALLS(ServiceFuzz::calls),
    /** Messages on the live channel. */
    SOCKET(ServiceFuzz::socket);

    private final Consumer<byte[]> tries;

    Target(Consumer<byte[]> tries) {
        this.tries = tries;
    }

    /** Its name, such as {@code kitchen-file}; its corpus is in the folder of that name. */
    String wireName() {
        return name().toLowerCase(Locale.ROOT).replace('_', '-');
    }

    /** Tries one input; an {@link AssertionError} or any exception is a finding. */
    void hold(byte[] input) {
        tries.accept(input);
    }
}
