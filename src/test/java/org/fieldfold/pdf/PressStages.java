package org.fieldfold.pdf;

import java.io.ByteArrayOutputStream;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.stream.Stream;
import java.util.zip.Deflater;
import org.apache.pdfbox.cos.COSDictionary;

/** The stages of printing one job, each to be run by itself, for benchmarks. */
public final class PressStages {
    private PressStages() {}

    /** By name, in order; the last is not a stage but the floor: the finished bytes copied once. */
    public static Map<String, Runnable> of(PrintJob job, Press press, Map<String, byte[]> figures) {
        FrozenType type = FrozenType.cut(new TypeCase(), job.characters());
        ArtRoom art = new ArtRoom(figures, ArtStore.NONE);
        Frozen colour = Streams.colourProfile();
        byte[] sheet = press.print(job);
        Plate plate = Plate.of(job, type, art, colour);
        Sheet drawn = Sheet.draw(job, type, art, plate);
        List<byte[]> contents = drawn.pages().stream().map(page -> page.out().toBytes()).toList();
        Map<String, Runnable> stages = new LinkedHashMap<>();
        stages.put("the plate, once for all copies", () -> Plate.of(job, type, art, colour));
        stages.put("content streams", () -> Sheet.draw(job, type, art, plate));
        stages.put("compression", () -> contents.forEach(PressStages::deflate));
        stages.put("structure tree", () -> tree(Sheet.draw(job, type, art, plate)));
        stages.put("the whole file", () -> SheetFile.write(Sheet.draw(job, type, art, plate)));
        stages.put("floor: the finished bytes copied", () -> new ByteArrayOutputStream(sheet.length)
                .writeBytes(sheet));
        return stages;
    }

    private static void deflate(byte[] content) {
        Deflater deflater = new Deflater(6);
        deflater.setInput(content);
        deflater.finish();
        byte[] out = new byte[content.length + 64];
        deflater.deflate(out);
        deflater.end();
    }

    private static void tree(Sheet drawn) {
        List<COSDictionary> pages = Stream.generate(COSDictionary::new).limit(drawn.pages().size()).toList();
        Links links = new Links(drawn.plate().prelude().links());
        drawn.tree().nodes().forEach(links::of);
        StructureTree.write(drawn, pages, links.elements());
    }
}
