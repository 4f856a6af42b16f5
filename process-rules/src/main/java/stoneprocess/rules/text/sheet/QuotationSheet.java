package stoneprocess.rules.text.sheet;

import static stoneprocess.rules.text.document.Wording.phrase;
import static stoneprocess.rules.text.sheet.EstimateWords.NOTHING;

import java.math.BigDecimal;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Objects;
import java.util.Optional;
import java.util.Set;
import java.util.TreeSet;
import java.util.function.Function;
import stoneprocess.core.estimate.Money;
import stoneprocess.core.estimate.Price;
import stoneprocess.core.estimate.PriceItem;
import stoneprocess.core.estimate.PriceTerms;
import stoneprocess.core.estimate.Remark;
import stoneprocess.core.estimate.Work;
import stoneprocess.core.parameter.Parameters;
import stoneprocess.core.quantity.Share;
import stoneprocess.core.quantity.Unit;
import stoneprocess.core.site.JobNote;
import stoneprocess.core.site.Quotation;
import stoneprocess.core.site.Quotation.QuotedJob;
import stoneprocess.core.site.Quotation.QuotedVariant;
import stoneprocess.core.site.Quotation.Unknown;
import stoneprocess.core.site.Variant;
import stoneprocess.core.site.VariantScope;
import stoneprocess.core.survey.Finish;
import stoneprocess.core.survey.SurveyField;
import stoneprocess.core.topic.Task;
import stoneprocess.rules.text.Words;
import stoneprocess.rules.text.document.Document;
import stoneprocess.rules.text.document.Draft;
import stoneprocess.rules.text.document.Language;
import stoneprocess.rules.text.document.Ledger;
import stoneprocess.rules.text.document.Wording;
import stoneprocess.rules.text.document.Wording.Joint;

/** A quotation as an owner reads it: the work, what is open, the variants side by side, what is not included. */
public final class QuotationSheet {
    /** What nobody measured, so that the price depends on it. */
    private static final Set<JobNote> UNMEASURED = Set.of(
            JobNote.EDGES_FROM_AREA,
            JobNote.REPAIRS_BY_LIMIT,
            JobNote.REPAIRS_AS_USUAL,
            JobNote.STONE_MAY_BE_HARD,
            JobNote.ONE_AT_THE_BARRIER);

    private static final int CENTS = 2;

    private final Quotation quotation;
    private final boolean calculation;
    private final Parameters parameters;
    private final List<QuotedVariant> priced;
    private final Draft draft;

    private QuotationSheet(Quotation quotation, Parameters parameters, boolean calculation) {
        this.quotation = quotation;
        this.calculation = calculation;
        this.parameters = parameters;
        this.priced = quotation.variants().stream()
                .filter(variant -> variant.job().isPresent())
                .toList();
        this.draft = Draft.titled(Wording.name(quotation.floor()), parameters);
    }

    /**
     * The document of a quotation.
     *
     * @param parameters the numbers that its phrases name
     * @param calculation whether the house's own cost, risk and margin are told apart, which are not for the owner
     */
    public static Document of(Quotation quotation, Parameters parameters, boolean calculation) {
        Objects.requireNonNull(quotation, "quotation");
        Objects.requireNonNull(parameters, "parameters");
        QuotationSheet sheet = new QuotationSheet(quotation, parameters, calculation);
        sheet.summary();
        if (!sheet.priced.isEmpty()) {
            sheet.scope();
            sheet.choices();
            sheet.conditions();
            sheet.prices();
            sheet.fromTheClient();
            sheet.terms();
        }
        sheet.notPriced();
        if (!sheet.priced.isEmpty()) {
            sheet.notIncluded();
        }
        return sheet.draft
                .section("closing.heading")
                .paragraph("quotation.advice")
                .document();
    }

    private void summary() {
        draft.paragraph(phrase(calculation ? "quotation.calculation" : "quotation.summary")
                .with("client", Wording.name(quotation.client()))
                .with("date", Wording.name(quotation.date()))
                .with("days", quotation.validDays())
                .with("currency", Wording.name(quotation.currency())));
    }

    /** The work of the first variant, numbered, and by what each further one differs from it. */
    private void scope() {
        List<Wording> first = ScopeWords.of(job(priced.get(0)), parameters);
        draft.section("quotation.scope");
        first.forEach(draft::numbered);
        if (priced.size() > 1) {
            draft.section("quotation.variants");
        }
        for (QuotedVariant variant : priced.subList(1, priced.size())) {
            List<Wording> work = ScopeWords.of(job(variant), parameters);
            VariantScope scope = variant.variant().scope();
            List<Wording> more = new ArrayList<>(work);
            List<Wording> less = new ArrayList<>(first);
            List<Wording> differs = new ArrayList<>();
            if (scope != VariantScope.AS_PLANNED) {
                differs.add(Wording.of(scope, "caution"));
            }
            more.removeAll(first);
            less.removeAll(work);
            if (scope == VariantScope.REPAIRS_ONLY) {
                work.retainAll(first);
                items(differs, "quotation.scope.only", work, first);
            } else {
                items(differs, "quotation.scope.without", less, first);
            }
            if (!more.isEmpty()) {
                differs.add(phrase("quotation.scope.with").with("work", Wording.list(Joint.SENTENCES, more)));
            }
            if (!differs.isEmpty()) {
                draft.bullet(phrase("quotation.scope.variant")
                        .with("variant", name(variant.variant()))
                        .with("differs", Wording.list(Joint.SENTENCES, differs)));
            }
        }
    }

    /** Work by its numbers in the list of the first variant. */
    private static void items(List<Wording> differs, String key, List<Wording> work, List<Wording> listed) {
        if (!work.isEmpty()) {
            List<Wording> numbers = work.stream()
                    .map(listed::indexOf)
                    .map(place -> Wording.number(place + 1))
                    .toList();
            differs.add(phrase(key).with("count", work.size()).with("items", Wording.list(Joint.AND, numbers)));
        }
    }

    /** What the owner decides, with the price of each answer. */
    private void choices() {
        List<Unknown> choices =
                quotation.unknowns().stream().filter(Unknown::ownersChoice).toList();
        draft.list("quotation.choices", choices, unknown -> {
            List<Wording> sentences = new ArrayList<>(List.of(asked(unknown, "quotation.choice")));
            unknown.answers().stream()
                    .filter(answer -> !unknown.counted(answer) && answer.total().isPresent())
                    .forEach(answer -> sentences.add(phrase("quotation.choice.other")
                            .with("answer", AnswerRange.words(unknown, answer::equals))
                            .with("total", amount(answer.total().orElseThrow()))));
            if (unknown.mayStop()) {
                sentences.add(phrase("quotation.choice.stops")
                        .with(
                                "answers",
                                AnswerRange.words(
                                        unknown, answer -> answer.total().isEmpty())));
            }
            return Wording.list(Joint.SENTENCES, sentences);
        });
    }

    private static Wording asked(Unknown unknown, String key) {
        boolean counted = unknown.answers().stream().anyMatch(unknown::counted);
        String own = key + "." + unknown.field();
        return phrase(!counted ? "quotation.open" : Language.english().has(own) ? own : key)
                .with("question", phrase("field." + unknown.field()))
                .with("counted", AnswerRange.words(unknown, unknown::counted))
                .with("least", amount(unknown.least()))
                .with("most", amount(unknown.most()));
    }

    /** What the price rests on and nobody has seen, with the house's own hours. */
    private void conditions() {
        QuotedJob first = job(priced.get(0));
        draft.section("quotation.conditions")
                .bullet(phrase("quotation.shift")
                        .with("shift", first.worked().shift())
                        .with("week", first.worked().daysAWeek()));
        if (first.night().percent() > 0) {
            draft.bullet(
                    first.night().percent() < 100
                            ? phrase("quotation.night").with("share", first.night())
                            : phrase("quotation.night.all"));
        }
        quotation.unknowns().stream()
                .filter(unknown -> !unknown.ownersChoice())
                .forEach(unknown -> draft.bullet(asked(unknown, "quotation.condition")));
        Set<JobNote> unmeasured = new TreeSet<>();
        priced.forEach(variant -> unmeasured.addAll(job(variant).notes()));
        unmeasured.retainAll(UNMEASURED);
        draft.bullets(unmeasured, note -> Wording.of(note, "owner"));
        List<String> untried = quotation.untried().stream()
                .filter(field ->
                        !field.equals(SurveyField.EDGES.name()) || !unmeasured.contains(JobNote.EDGES_FROM_AREA))
                .toList();
        if (!untried.isEmpty()) {
            draft.bullet(phrase("quotation.untried")
                    .with("questions", Wording.list(Joint.SENTENCES, untried, field -> phrase("field." + field))));
        }
    }

    private void fromTheClient() {
        QuotedJob first = job(priced.get(0));
        draft.section("quotation.from-you").bullet("quotation.from-you.cleared");
        draft.bullet(
                first.work().contains(Task.ARRANGE_POWER.key())
                        ? "quotation.from-you.water"
                        : first.work().contains(Task.BRING_WATER.key())
                                ? "quotation.from-you.current"
                                : "quotation.from-you.both");
        if (first.draws().kilowatts() > 0) {
            draft.bullet(phrase("quotation.from-you.supply")
                    .with("power", first.draws())
                    .with("supply", Words.supply(first.draws())));
        }
        priced.stream()
                .filter(variant -> job(variant).draws().compareTo(first.draws()) > 0)
                .forEach(variant -> draft.bullet(phrase("quotation.from-you.supply.variant")
                        .with("variant", name(variant.variant()))
                        .with("power", job(variant).draws())
                        .with("supply", Words.supply(job(variant).draws()))));
        if (first.work().contains(Work.SLURRY.key())) {
            draft.bullet("quotation.from-you.slurry");
        }
        draft.bullet("quotation.from-you.access");
        if (first.notes().contains(JobNote.DETECTORS_BY_OTHERS)) {
            draft.bullet(Wording.of(JobNote.DETECTORS_BY_OTHERS, "owner"));
        }
        if (first.work().contains(Task.HEATING_OFF.key())) {
            draft.bullet("quotation.from-you.heating");
        }
    }

    private void prices() {
        Ledger prices = Ledger.headed(
                priced.stream().map(variant -> name(variant.variant())).toList(), NOTHING);
        draft.section("quotation.prices");
        row(prices, phrase("quotation.area"), job -> EstimateWords.number(job.area()));
        if (priced.stream().anyMatch(variant -> job(variant).edges().kept() > 0)) {
            row(
                    prices,
                    phrase("quotation.edges"),
                    job -> EstimateWords.number(job.edges().in(Unit.METRE), 0));
        }
        row(
                prices,
                phrase("quotation.finish"),
                job -> job.finish().<Wording>map(Wording::of).orElseGet(() -> phrase("quotation.finish.none")));
        row(
                prices,
                phrase("quotation.sealer"),
                job -> phrase(job.sealed() ? "quotation.sealer.yes" : "quotation.sealer.no"));
        PriceTerms terms = job(priced.get(0)).price().terms();
        if (calculation) {
            amounts(prices, phrase("quotation.own-cost"), Price.Lines::work);
            amounts(prices, phrase("quotation.risk"), Price.Lines::risk);
            amounts(prices, phrase("quotation.margin").with("share", terms.margin()), Price.Lines::margin);
        } else {
            row(prices, phrase("quotation.work"), job -> amount(work(job)));
            if (priced.stream().anyMatch(variant -> job(variant).price().hire().isPresent())) {
                row(
                        prices,
                        phrase("quotation.hire"),
                        job -> job.price()
                                .hire()
                                .<Wording>map(QuotationSheet::amount)
                                .orElse(NOTHING));
            }
        }
        amounts(prices, phrase("quotation.travel"), Price.Lines::travel);
        if (priced.stream()
                .anyMatch(variant -> lines(job(variant)).upToMinimum().amount().signum() > 0)) {
            amounts(prices, phrase("quotation.minimum"), Price.Lines::upToMinimum);
        }
        amounts(prices, phrase("quotation.net"), Price.Lines::net);
        amounts(prices, phrase("quotation.tax").with("share", terms.tax()), Price.Lines::tax);
        amounts(prices, phrase(total()), Price.Lines::total);
        besideTheFirst(prices);
        int week = job(priced.get(0)).worked().daysAWeek();
        row(
                prices,
                phrase("quotation.days").with("week", week),
                job -> EstimateWords.number(job.days().likely()));
        row(
                prices,
                phrase("quotation.days.high"),
                job -> EstimateWords.number(job.days().high()));
        draft.add(prices.table());
    }

    /** No sum stands firm beside a question that can end the work. */
    private String total() {
        List<Unknown> stops =
                quotation.unknowns().stream().filter(Unknown::mayStop).toList();
        if (stops.isEmpty()) {
            return "quotation.total";
        }
        return stops.stream().allMatch(unknown -> unknown.answers().stream().anyMatch(unknown::counted))
                ? "quotation.total.conditional"
                : "quotation.total.open";
    }

    /** By how much the others cost more or less than the first that has a price. */
    private void besideTheFirst(Ledger prices) {
        BigDecimal first = lines(job(priced.get(0))).total().amount();
        List<BigDecimal> apart = priced.stream()
                .map(variant -> lines(job(variant)).total().amount().subtract(first))
                .toList();
        if (apart.stream().anyMatch(more -> more.signum() > 0)) {
            row(prices, "quotation.more", apart);
        }
        if (apart.stream().anyMatch(more -> more.signum() < 0)) {
            row(prices, "quotation.less", apart.stream().map(BigDecimal::negate).toList());
        }
    }

    private static void row(Ledger prices, String key, List<BigDecimal> apart) {
        prices.row(
                phrase(key),
                apart.stream()
                        .map(more -> more.signum() > 0 ? amount(more) : NOTHING)
                        .toList(),
                NOTHING);
    }

    private void row(Ledger prices, Wording label, Function<QuotedJob, ? extends Wording> cell) {
        prices.row(label, priced.stream().map(QuotationSheet::job).map(cell).toList(), NOTHING);
    }

    /** Work with risk and margin, but for the hire of a machine. */
    private static Money work(QuotedJob job) {
        Money all = lines(job).withMargin();
        return job.price()
                .hire()
                .map(hire -> new Money(all.amount().subtract(hire.amount()), all.currency()))
                .orElse(all);
    }

    private void amounts(Ledger prices, Wording label, Function<Price.Lines, Money> line) {
        row(prices, label, job -> amount(line.apply(lines(job))));
    }

    private void terms() {
        PriceTerms terms = job(priced.get(0)).price().terms();
        draft.section("quotation.terms");
        if (calculation) {
            draft.bullet(phrase("quotation.one-price").with("risk", terms.risk()))
                    .bullet(phrase("quotation.rounding")
                            .with("step", Wording.number(terms.rounding().stripTrailingZeros())))
                    .bullet(Wording.of(Remark.MATERIALS_ARE_NOT_COUNTED));
            priced.forEach(this::band);
        }
        if (job(priced.get(0)).work().contains(Work.TEST_AREA.key())) {
            draft.bullets("quotation.test-area", "quotation.finish-is-a-class");
        }
        chances();
        int crews = job(priced.get(0)).worked().crews();
        if (crews > 1) {
            draft.bullet(phrase("quotation.crews").with("crews", crews));
        }
        draft.bullet("quotation.otherwise");
        if (job(priced.get(0)).work().contains(Work.TEST_AREA.key())) {
            draft.bullet("quotation.days.likely");
        }
        draft.bullet(quotation
                .distance()
                .<Wording>map(
                        way -> phrase("quotation.distance").with("distance", Wording.number(way.in(Unit.KILOMETRE))))
                .orElseGet(() -> phrase("quotation.no-distance")));
    }

    /** Each finish once, with the chance of the first variant that has it. */
    private void chances() {
        Map<Finish, Share> chances = new LinkedHashMap<>();
        priced.forEach(variant -> variant.chance()
                .ifPresent(chance -> job(variant)
                        .finish()
                        .ifPresent(finish -> chances.putIfAbsent(finish, new Share(Math.rint(chance.percent()))))));
        chances.forEach((finish, chance) ->
                draft.bullet(phrase("quotation.chance").with("finish", finish).with("chance", chance)));
    }

    private void band(QuotedVariant variant) {
        Price price = job(variant).price();
        draft.bullet(phrase("quotation.band")
                .with("variant", name(variant.variant()))
                .with("low", amount(price.band().low()))
                .with("likely", amount(price.band().likely()))
                .with("high", amount(price.band().high())));
    }

    private void notPriced() {
        List<QuotedVariant> without = quotation.variants().stream()
                .filter(variant -> variant.notQuoted().isPresent())
                .toList();
        draft.list(
                "quotation.not-priced",
                without,
                variant -> phrase("quotation.not-priced.line")
                        .with("variant", name(variant.variant()))
                        .with("reason", Wording.of(variant.notQuoted().orElseThrow())));
        without.stream()
                .filter(variant -> !variant.before().isEmpty())
                .max((first, second) ->
                        Integer.compare(first.before().size(), second.before().size()))
                .ifPresent(variant -> draft.list(
                                "quotation.before",
                                variant.before(),
                                visit -> phrase("quotation.before.line")
                                        .with("visit", Wording.of(visit.kind()))
                                        .with(
                                                "total",
                                                amount(visit.price().lines().total())))
                        .bullet("quotation.laboratory"));
    }

    private void notIncluded() {
        draft.section("quotation.not-included").bullets(quotation.exclusions(), Wording::name);
        Set<String> unpriced = new TreeSet<>();
        priced.forEach(variant -> unpriced.addAll(job(variant).price().cost().unpriced()));
        unpriced.removeAll(List.of(PriceItem.ENERGY_KILOWATT_HOUR.key(), PriceItem.WATER_CUBIC_METRE.key()));
        if (!unpriced.isEmpty()) {
            draft.bullet(phrase("quotation.unpriced")
                    .with("items", Wording.list(Joint.COMMA, unpriced, EstimateWords::priced)));
        }
        if (priced.stream().anyMatch(variant -> job(variant).notes().contains(JobNote.SEALED_LATER))) {
            draft.bullet(Wording.of(JobNote.SEALED_LATER));
        }
    }

    private static QuotedJob job(QuotedVariant variant) {
        return variant.job().orElseThrow();
    }

    private static Price.Lines lines(QuotedJob job) {
        return job.price().lines();
    }

    private static Wording amount(Money money) {
        return amount(money.amount());
    }

    /** Whole where it is whole. */
    private static Wording amount(BigDecimal amount) {
        return EstimateWords.number(amount, amount.stripTrailingZeros().scale() > 0 ? CENTS : 0);
    }

    /** The finish, where one was asked for, and what is left out. */
    private static Wording name(Variant variant) {
        Wording scope = Wording.of(variant.scope());
        Optional<Wording> finish = variant.finish().map(Wording::of);
        if (finish.isEmpty()) {
            return scope;
        }
        return variant.scope() == VariantScope.AS_PLANNED
                ? finish.get()
                : Wording.list(Joint.COMMA, List.of(finish.get(), scope));
    }
}
