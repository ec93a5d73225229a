package org.fieldfold.report;

import java.math.BigDecimal;
import java.math.RoundingMode;
import java.util.List;
import org.fieldfold.source.Finding;
import tools.jackson.core.JsonGenerator;

/** How every panel of a build fits, as JSON: a list of panels, and beside it all findings. */
public final class FitReport {
    private FitReport() {
    }

    /** An object with the lists {@code findings} and {@code panels}. */
    public static String json(List<Finding> findings, List<FitRow> fit) {
        return JsonText.of(json -> {
            json.writeStartObject();
            JsonFindings.list(json, findings);
            json.writeArrayPropertyStart("panels");
            fit.forEach(row -> panel(json, row));
            json.writeEndArray();
            json.writeEndObject();
        });
    }

    private static void panel(JsonGenerator json, FitRow row) {
        json.writeStartObject();
        json.writeStringProperty("guide", row.guide());
        json.writeStringProperty("paper", row.paper());
        json.writeNumberProperty("panel", row.panel());
        json.writeStringProperty("section", row.section());
        json.writeNumberProperty("used", thousandths(row.used()));
        json.writeNumberProperty("type-size", thousandths(row.typeSize()));
        json.writeNumberProperty("leading", thousandths(row.leading()));
        json.writeArrayPropertyStart("forms");
        for (FitRow.Form form : row.forms()) {
            json.writeStartObject();
            json.writeStringProperty("field", form.field());
            json.writeStringProperty("form", form.brief() ? "short" : "full");
            json.writeEndObject();
        }
        json.writeEndArray();
        row.over().ifPresent(over -> {
            json.writeObjectPropertyStart("over");
            json.writeStringProperty("entry", over.entry());
            json.writeStringProperty("field", over.field());
            json.writeStringProperty("place", over.at().place());
            json.writeNumberProperty("lines", over.lines());
            json.writeEndObject();
        });
        json.writeEndObject();
    }

    private static BigDecimal thousandths(double number) {
        BigDecimal rounded = BigDecimal.valueOf(number).setScale(3, RoundingMode.HALF_UP);
        return rounded.signum() == 0 ? BigDecimal.ZERO : new BigDecimal(rounded.stripTrailingZeros()
                .toPlainString());
    }
}
