package spoonfall.score.report;

import com.fasterxml.jackson.core.JsonProcessingException;
import com.fasterxml.jackson.databind.ObjectMapper;
import com.fasterxml.jackson.databind.node.ArrayNode;
import com.fasterxml.jackson.databind.node.ObjectNode;
import java.io.UncheckedIOException;
import java.util.function.Predicate;
import spoonfall.score.CookScore;
import spoonfall.score.Scorecard;

/** The figures as JSON; what is infinite or unknown is null. */
final class JsonReport {
    private static final ObjectMapper MAPPER = new ObjectMapper();

    private JsonReport() {}

    static String of(Scorecard card, String subject) {
        ObjectNode root = MAPPER.createObjectNode();
        root.put("subject", subject);
        root.put("cooks", card.cooks().size());
        root.put("hours", rounded(card.hours(cook -> true)));
        group(root.putObject("clean"), card, CookScore::clean);
        group(root.putObject("all"), card, cook -> true);
        setTests(root.putObject("windowSeen"), card, CookScore::windowSeen);
        ArrayNode faults = root.putArray("faults");
        for (Scorecard.Found found : card.found()) {
            ObjectNode node = faults.addObject();
            node.put("alarm", found.alarm()).put("count", found.count()).put("found", found.found());
            quantiles(node.putObject("delayS"), found.delaysS());
        }
        root.put("gelPointTooEarly", card.gelTooEarly(false));
        root.put("gelPointTooEarlyOnAWrongReading", card.gelTooEarly(true));
        root.put("mostAlarmsInTenMinutesOfACleanCook", card.mostAlarmsInCleanCooks());
        root.put("mostCallsInTenMinutesOfACleanCook", card.mostCallsInCleanCooks());
        try {
            return MAPPER.writerWithDefaultPrettyPrinter().writeValueAsString(root) + "\n";
        } catch (JsonProcessingException e) {
            throw new UncheckedIOException(e);
        }
    }

    private static void group(ObjectNode node, Scorecard card, Predicate<CookScore> which) {
        ArrayNode forecasts = node.putArray("forecasts");
        for (Scorecard.Horizon horizon : card.horizons(which)) {
            ObjectNode each = forecasts.addObject();
            each.put("minutesAhead", horizon.minutesAhead());
            each.put("count", horizon.count()).put("missing", horizon.missing());
            horizon.errors().forEach((method, errors) -> quantiles(each.putObject(method.wireName() + "S"), errors));
            put(each, "inInterval", horizon.covered());
            put(each, "intervalWidthS", horizon.widthS());
        }
        ObjectNode alarms = node.putObject("falseAlarms");
        card.falseAlarms(which, alarm -> true).forEach(alarms::put);
        put(node, "falseAlarmsPer100Hours", card.falseAlarmsPer100Hours(which));
        setTests(node, card, which);
    }

    private static void setTests(ObjectNode node, Scorecard card, Predicate<CookScore> which) {
        put(node, "setTestsInTime", card.windowsInTime(which));
        quantiles(node.putObject("setTestsOffS"), card.windowErrorsS(which));
    }

    private static void quantiles(ObjectNode node, Scorecard.Quantiles quantiles) {
        put(node, "median", quantiles.median());
        put(node, "ninety", quantiles.ninety());
    }

    private static void put(ObjectNode node, String name, double value) {
        if (Double.isFinite(value)) {
            node.put(name, rounded(value));
        } else {
            node.putNull(name);
        }
    }

    private static double rounded(double value) {
        return Math.round(value * 1000) / 1000.0;
    }
}
