package spoonfall.log.memory;

import java.time.Instant;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import spoonfall.calibration.Correction;
import spoonfall.log.CalibrationBook;
import spoonfall.log.store.cook.StoredCook;

/**
 * By how much the thermometer of a cook showed too much, by the calibration that came next. The record names a thermometer by
 * its place in the pan, the calibrations by the device: they are brought together by the correction that the cook had,
 * or, if it had none, where only one thermometer was ever calibrated.
 */
final class NextCalibration {
    private NextCalibration() {}

    /**
     * By how much it showed too much, in °C, its correction of then taken into account.
     *
     * @param atC about which temperature, in °C
     * @return empty if no later calibration can be told to be this thermometer's
     */
    static OptionalDouble highC(StoredCook cook, List<CalibrationBook.Entry> entries, double atC) {
        String probe = cook.header().basis().probes().get(0);
        Optional<Correction> then =
                Optional.ofNullable(cook.header().corrections().get(probe));
        Instant began = cook.header().startedAt();
        List<CalibrationBook.Entry> counting =
                entries.stream().filter(entry -> !entry.undone()).toList();
        Optional<String> device = then.isPresent()
                ? counting.stream()
                        .filter(entry -> entry.correction().equals(then.get()))
                        .map(CalibrationBook.Entry::probe)
                        .findFirst()
                : onlyDevice(counting);
        return device.flatMap(known -> counting.stream()
                        .filter(entry ->
                                entry.probe().equals(known) && entry.at().isAfter(began))
                        .findFirst())
                .map(next -> OptionalDouble.of(then.map(one -> one.trueC(atC)).orElse(atC)
                        - next.correction().trueC(atC)))
                .orElse(OptionalDouble.empty());
    }

    private static Optional<String> onlyDevice(List<CalibrationBook.Entry> entries) {
        List<String> devices =
                entries.stream().map(CalibrationBook.Entry::probe).distinct().toList();
        return devices.size() == 1 ? Optional.of(devices.get(0)) : Optional.empty();
    }
}
