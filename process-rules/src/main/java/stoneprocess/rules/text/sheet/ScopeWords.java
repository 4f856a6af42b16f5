package stoneprocess.rules.text.sheet;

import static stoneprocess.rules.text.document.Wording.phrase;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import stoneprocess.core.estimate.StepKind;
import stoneprocess.core.estimate.Work;
import stoneprocess.core.parameter.Parameters;
import stoneprocess.core.quantity.Area;
import stoneprocess.core.quantity.Count;
import stoneprocess.core.quantity.Quantity;
import stoneprocess.core.quantity.Range;
import stoneprocess.core.quantity.Unit;
import stoneprocess.core.site.JobNote;
import stoneprocess.core.site.Quotation.QuotedJob;
import stoneprocess.rules.text.document.Language;
import stoneprocess.rules.text.document.Wording;

/** The work of a job in the words of a client, one sentence for each thing that he orders. */
final class ScopeWords {
    private ScopeWords() {}

    /** How a crew goes about its work, such as planning bays, is left out. */
    static List<Wording> of(QuotedJob job, Parameters parameters) {
        List<Wording> work = new ArrayList<>();
        for (String name : job.work()) {
            if (name.equals(Work.OPEN_FIELD.key())) {
                work.add(floor(job));
                if (job.edges().kept() > 0 && !job.notes().contains(JobNote.NO_EDGE_WORK)) {
                    work.add(phrase("scope.edges")
                            .with("edges", EstimateWords.number(job.edges().in(Unit.METRE), 0)));
                }
            } else if (name.equals(Work.TEST_AREA.key()) && job.notes().contains(JobNote.SIGNED_ON_THE_SPOT)) {
                work.add(phrase("scope.test-area.small"));
            } else if (name.equals(Work.TEST_AREA.key())) {
                work.add(phrase("scope.test-area").with("area", testArea(job, parameters)));
            } else {
                sentence(name)
                        .map(words -> Optional.ofNullable(job.extents().get(name))
                                .map(extent -> Wording.sentences(words, extent(extent)))
                                .orElse(words))
                        .ifPresent(work::add);
            }
        }
        return work;
    }

    private static Wording testArea(QuotedJob job, Parameters parameters) {
        boolean large = job.area().compareTo(parameters.get("test-area-large.from", Area.class)) >= 0;
        return phrase(large ? "scope.test-area.two-places" : "scope.test-area.one-place");
    }

    private static Wording extent(Range<Quantity> extent) {
        Wording low = EstimateWords.number(extent.low());
        Wording high = EstimateWords.number(extent.high());
        Wording number =
                low.equals(high) ? low : phrase("table.range").with("low", low).with("high", high);
        return phrase(extent.low() instanceof Count ? "scope.pieces" : "scope.places")
                .with("number", number)
                .with("unit", EstimateWords.unit(extent.high()));
    }

    private static Wording floor(QuotedJob job) {
        List<String> grits = job.steps().stream()
                .filter(step -> !step.equals(StepKind.POWDER.key()) && !step.contains(" "))
                .toList();
        Wording first = EstimateWords.subject(grits.get(0));
        Wording last = EstimateWords.subject(grits.get(grits.size() - 1));
        return phrase(job.steps().contains(StepKind.POWDER.key()) ? "scope.floor-and-powder" : "scope.floor")
                .with(
                        "grits",
                        grits.size() == 1
                                ? first
                                : phrase("scope.grits")
                                        .with("count", grits.size())
                                        .with("first", first)
                                        .with("last", last))
                .with("finish", job.finish().<Wording>map(Wording::of).orElse(EstimateWords.NOTHING));
    }

    private static Optional<Wording> sentence(String name) {
        String key = EstimateWords.named(name)
                .map(term -> Wording.key(term) + ".scope")
                .orElse("scope." + name);
        return Optional.of(key).filter(Language.english()::has).map(Wording::phrase);
    }
}
