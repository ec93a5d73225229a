package org.fieldfold.output;

import java.util.List;
import org.fieldfold.report.JsonText;
import tools.jackson.core.JsonGenerator;

/**
 * What a build was made of and what it made: inputs and outputs with sizes and hashes. It says nothing about
 * when or where it was made, so that the same content gives the same manifest.
 */
public record Manifest(int year, String version, boolean proof, List<OutputFile> inputs,
        List<OutputFile> outputs) {
    public String json() {
        return JsonText.of(json -> {
            json.writeStartObject();
            json.writeNumberProperty("edition", year);
            json.writeStringProperty("fieldfold", version);
            json.writeBooleanProperty("proof", proof);
            list(json, "inputs", inputs);
            list(json, "outputs", outputs);
            json.writeEndObject();
        });
    }

    private static void list(JsonGenerator json, String name, List<OutputFile> files) {
        json.writeArrayPropertyStart(name);
        for (OutputFile file : files) {
            json.writeStartObject();
            json.writeStringProperty("path", file.path());
            json.writeNumberProperty("size", file.size());
            json.writeStringProperty("sha256", file.sha256());
            json.writeEndObject();
        }
        json.writeEndArray();
    }
}
