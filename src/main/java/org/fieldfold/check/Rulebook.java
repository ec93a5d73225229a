package org.fieldfold.check;

import java.io.IOException;
import java.io.InputStream;
import java.io.UncheckedIOException;
import java.nio.charset.StandardCharsets;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.stream.Stream;
import org.fieldfold.entry.ContentBase;
import org.fieldfold.source.Finding;

/** All rules of substance, in the order in which a reviewer would ask them. A new rule is one line here. */
public final class Rulebook {
    private static final List<Rule> RULES = List.of(
            new DescriptionMissing(),
            new NoMonitoring(),
            new ThresholdMissing(),
            new ThresholdIncomplete(),
            new SampleUneven(),
            new SampleTooSmall(),
            new SampleUnsure(),
            new DispersionUnfit(),
            new StopEarlyUnfit(),
            new InjuryLevelUnfit(),
            new ThresholdMoved(),
            new PriceStale(),
            new IntervalTableBroken(),
            new DegreeDaysContradict(),
            new EventSeldomReached(),
            new EventOutsideSeason(),
            new StationRecordShort(),
            new StageOutsideCrop(),
            new SourcesDisagree(),
            new TierMissing(),
            new TierOrder(),
            new PracticeInWrongTier(),
            new InsecticideWithoutCondition(),
            new NoCaution(),
            new BeesAtFlowering(),
            new OneGroupOnly(),
            new RotationBroken(),
            new NothingFitsBeforeHarvest(),
            new RestrictedInGarden(),
            new CoverWithoutRemoval(),
            new CoverWithoutRotation(),
            new TunnelWithoutWaterAndAir(),
            new MeasuresUnfit(),
            new NetTooCoarse(),
            new BodyWidthUnfit(),
            new MaterialIncomplete(),
            new GroupCodeForm(),
            new SignalWordUnfit(),
            new LabelNotChecked(),
            new MaterialWithdrawn(),
            new MaterialLeftShort(),
            new ScientificNameForm(),
            new SizesContradict(),
            new LookAlikeOneWay(),
            new PestWithoutFigure(),
            new FigureIncomplete(),
            new FigureWithoutRelease(),
            new RasterTooCoarse(),
            new TextTooLong(),
            new HardToRead(),
            new PrintedRate(),
            new BrandLikeName(),
            new RevisionDate(),
            new ReviserMissing(),
            new SourceMissing(),
            new SourceUnused(),
            new EntryInNoGuide(),
            new CropUnused(),
            new GuideUnfit(),
            new SheetUnknown(),
            new OfficeUnserved(),
            new OfficeLeavesOut(),
            new LocalNoteUnfit(),
            new LocalNoteFacts(),
            new InkTooPale(),
            new EditionDates(),
            new TranslationMissing(),
            new TranslationDue(),
            new TranslationOfNothing(),
            new TranslationNumbers(),
            new TranslationTerms());

    private Rulebook() {
    }

    public static List<Rule> rules() {
        return RULES;
    }

    /** Every finding of every rule, sorted by file and position. */
    public static List<Finding> check(ContentBase base, LocalDate asOf) {
        return questions(base).parallel().flatMap(question -> {
            List<Finding> found = new ArrayList<>();
            question.ask(base, asOf, found::add);
            return found.stream();
        }).sorted().toList();
    }

    /**
     * Everything that is asked of a base, in parts that can be asked by themselves: rules that look at texts,
     * translations or pests one by one are put to each, all others to the base as a whole.
     */
    static Stream<Question> questions(ContentBase base) {
        Stream<Question> ofOne = RULES.stream().filter(rule -> !(rule instanceof TextRule)
                && !(rule instanceof TranslationRule)).flatMap(rule -> rule instanceof PestRule ofPests
                ? ofPests.questions(base) : Stream.of(new Question(rule.id(), List.of(rule), rule::check)));
        return Stream.of(ofOne, TextRule.questions(those(TextRule.class), base),
                TranslationRule.questions(those(TranslationRule.class), base)).flatMap(questions -> questions)
                .toList().stream();
    }

    private static <R extends Rule> List<R> those(Class<R> kind) {
        return RULES.stream().filter(kind::isInstance).map(kind::cast).toList();
    }

    /**
     * What a rule asks, in one sentence: the first paragraph of its page; empty when there is no such rule.
     */
    public static Optional<String> summary(String id) {
        return explain(id).map(page -> page.split("\n\n", 3)[1].replace('\n', ' '));
    }

    /**
     * The page that explains a rule, of substance or of form, as Markdown; empty when there is no such rule.
     *
     * @param id as it stands in brackets behind a finding
     */
    public static Optional<String> explain(String id) {
        if (!id.matches("[a-z0-9-]+")) {
            return Optional.empty();
        }
        try (InputStream page = Rulebook.class.getResourceAsStream("rules/" + id + ".md")) {
            return page == null ? Optional.empty()
                    : Optional.of(new String(page.readAllBytes(), StandardCharsets.UTF_8));
        } catch (IOException unreadable) {
            throw new UncheckedIOException(unreadable);
        }
    }
}
