package org.fieldfold.manuscript;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.EnumMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.stream.Collectors;
import org.fieldfold.entry.Crop;
import org.fieldfold.entry.Damage;
import org.fieldfold.entry.DamageSign;
import org.fieldfold.entry.PestEntry;
import org.fieldfold.entry.Placed;
import org.fieldfold.entry.PlantPart;
import org.fieldfold.prose.Run;
import org.fieldfold.source.Span;

/** Writes the ways to an entry: by crop, and by the part of the plant and what is seen on it. */
final class FinderPages {
    private final Register register;
    private final Span origin;
    private final List<PestEntry> pests;
    private final Map<PlantPart, Map<DamageSign, List<PestEntry>>> damage;

    FinderPages(Register register) {
        this.register = register;
        this.origin = register.base().edition().at("title");
        this.pests = register.base().pests().values().stream().map(Placed::value).toList();
        this.damage = damage(pests);
    }

    List<Page> pages() {
        List<Page> pages = new ArrayList<>();
        pages.add(look());
        damage.forEach((part, signs) -> pages.add(part(part, signs)));
        pages.add(new AnimalsPage(register).page());
        pages.add(crops());
        for (Placed<Crop> crop : register.base().crops().values()) {
            pages.add(crop(crop.value()));
        }
        return pages;
    }

    /** Part of the plant, then sign, then the entries that do it. */
    private static Map<PlantPart, Map<DamageSign, List<PestEntry>>> damage(List<PestEntry> pests) {
        Map<PlantPart, Map<DamageSign, List<PestEntry>>> all = new EnumMap<>(PlantPart.class);
        for (PestEntry pest : pests) {
            for (Damage seen : pest.damage()) {
                List<PestEntry> same = all
                        .computeIfAbsent(seen.part(), part -> new EnumMap<>(DamageSign.class))
                        .computeIfAbsent(seen.sign(), sign -> new ArrayList<>());
                if (!same.contains(pest)) {
                    same.add(pest);
                }
            }
        }
        return all;
    }

    private Page look() {
        List<Block.Tile> tiles = new ArrayList<>();
        damage.forEach((part, signs) -> {
            Optional<String> figure = signs.values().stream().flatMap(List::stream)
                    .sorted(Comparator.comparing((PestEntry pest) -> -share(pest, part))
                            .thenComparing(PestEntry::id))
                    .flatMap(pest -> register.damageFigure(pest.id()).stream()).findFirst()
                    .map(one -> one.id());
            tiles.add(new Block.Tile(Places.to(Places.part(part)), figure,
                    register.phrases().word("part", part),
                    List.of(Run.plain(signs.keySet().stream()
                            .map(sign -> register.phrases().word("sign", sign))
                            .collect(Collectors.joining(" · "))))));
        });
        tiles.add(new Block.Tile(Places.to(Places.ANIMALS), register.pestsById()
                .flatMap(pest -> register.figure(pest.id(), Optional.empty()).stream()).findFirst()
                .map(one -> one.id()), register.say("book.animals"),
                List.of(Run.plain(register.say("book.animals.why")))));
        return page(Places.LOOK, Page.Kind.LOOK, register.say("book.door.look"), Places.START,
                register.say("book.look.where"), List.of(new Block.Tiles(tiles, origin)));
    }

    /** Which share of a pest's damage is on this part: the one with the most shows it best. */
    private static double share(PestEntry pest, PlantPart part) {
        return pest.damage().stream().filter(seen -> seen.part() == part).count()
                / (double) pest.damage().size();
    }

    private Page part(PlantPart part, Map<DamageSign, List<PestEntry>> signs) {
        List<Block> blocks = new ArrayList<>();
        signs.forEach((sign, entries) -> {
            blocks.add(new Block.Heading(3, List.of(Run.strong(register.phrases().word("sign", sign))),
                    origin));
            blocks.add(new Block.Tiles(entries.stream().map(pest -> seen(pest, part, sign)).toList(),
                    origin));
        });
        return page(Places.part(part), Page.Kind.LOOK, register.phrases().word("part", part), Places.LOOK,
                register.say("book.look.what"), blocks);
    }

    private Block.Tile seen(PestEntry pest, PlantPart part, DamageSign sign) {
        String words = pest.damage().stream().filter(one -> one.part() == part && one.sign() == sign)
                .map(one -> one.text().pocket().words()).collect(Collectors.joining(" "));
        return register.tile(pest.id(), register.damageFigure(pest.id())
                .or(() -> register.figure(pest.id(), Optional.empty())), List.of(Run.plain(words + " "
                        + register.say("book.on-crops", names(pest.crops())))));
    }

    private String names(List<String> crops) {
        return crops.stream().map(register::name).collect(Collectors.joining(", "));
    }

    private Page crops() {
        List<Block.Tile> tiles = new ArrayList<>();
        Map<String, String> figures = CropFigures.of(register.base());
        for (Placed<Crop> placed : register.base().crops().values()) {
            Crop crop = placed.value();
            List<PestEntry> entries = register.pestsOf(crop.id());
            tiles.add(new Block.Tile(Places.to(Places.crop(crop.id())),
                    Optional.ofNullable(figures.get(crop.id())), crop.name(),
                    List.of(Run.plain(register.phrases().count("book.entries", entries.size(),
                            entries.size())))));
        }
        return page(Places.CROPS, Page.Kind.CROPS, register.say("book.door.crops"), Places.START,
                register.say("book.door.crops.why"), List.of(new Block.Tiles(tiles, origin)));
    }

    private Page crop(Crop crop) {
        List<PestEntry> entries = register.pestsOf(crop.id());
        List<Block> blocks = new ArrayList<>();
        if (entries.isEmpty()) {
            blocks.add(new Block.Paragraph(List.of(Run.plain(register.say("book.no-entries"))),
                    List.of(), origin));
        }
        blocks.add(new Block.Tiles(entries.stream().map(pest -> register.tile(pest.id(),
                register.figure(pest.id(), Optional.empty()),
                List.of(Run.plain(pest.damage().stream().findFirst()
                        .map(seen -> seen.text().pocket().words()).orElse(""))))).toList(), origin));
        List<Block.Fact> seen = new ArrayList<>();
        damage.forEach((part, signs) -> signs.forEach((sign, all) -> {
            List<PestEntry> here = all.stream().filter(pest -> pest.crops().contains(crop.id())).toList();
            if (!here.isEmpty()) {
                seen.add(new Block.Fact(register.say("book.part-sign", register.phrases().word("part", part),
                        register.phrases().word("sign", sign)), links(here)));
            }
        }));
        if (!seen.isEmpty()) {
            blocks.add(new Block.Heading(3, List.of(Run.strong(register.say("book.door.look"))), origin));
            blocks.add(new Block.Facts(seen, origin));
        }
        return page(Places.crop(crop.id()), Page.Kind.CROPS, crop.name(), Places.CROPS,
                crop.scientific(), blocks);
    }

    private static List<Run> links(List<PestEntry> entries) {
        Line line = Line.of();
        for (PestEntry pest : entries) {
            line.plain(line.isEmpty() ? "" : " · ")
                    .add(Run.plain(pest.names().common()).to(Places.to(pest.id())));
        }
        return line.runs();
    }

    private Page page(String id, Page.Kind kind, String name, String up, String beneath, List<Block> blocks) {
        List<Block> all = new ArrayList<>();
        Run below = id.startsWith("crop:") ? Run.name(beneath) : Run.plain(beneath);
        all.add(new Block.Title(List.of(Run.plain(name)), List.of(below), origin));
        all.addAll(blocks);
        return new Page(id, kind, name, up, List.of(new Page.Part("top", "", all)), origin);
    }
}
