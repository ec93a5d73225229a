package org.fieldfold.report;

import java.io.StringWriter;
import java.util.function.Consumer;
import tools.jackson.core.JsonGenerator;
import tools.jackson.core.ObjectWriteContext;
import tools.jackson.core.PrettyPrinter;
import tools.jackson.core.json.JsonFactory;
import tools.jackson.core.util.DefaultIndenter;
import tools.jackson.core.util.DefaultPrettyPrinter;

/** Indented JSON with LF line ends, whatever the machine. */
public final class JsonText {
    private static final JsonFactory FACTORY = new JsonFactory();

    private JsonText() {
    }

    /** What {@code writer} writes, as text with a final line end. */
    public static String of(Consumer<JsonGenerator> writer) {
        StringWriter text = new StringWriter();
        DefaultIndenter indenter = new DefaultIndenter("  ", "\n");
        ObjectWriteContext context = new ObjectWriteContext.Base() {
            @Override
            public PrettyPrinter getPrettyPrinter() {
                return new DefaultPrettyPrinter().withObjectIndenter(indenter).withArrayIndenter(indenter);
            }

            @Override
            public boolean hasPrettyPrinter() {
                return true;
            }
        };
        try (JsonGenerator json = FACTORY.createGenerator(context, text)) {
            writer.accept(json);
        }
        return text.append('\n').toString();
    }
}
