package stoneprocess.core.estimate;

import java.math.BigDecimal;
import java.math.RoundingMode;
import java.util.Optional;
import stoneprocess.core.internal.check.Refuse;

/**
 * What a house asks for a job: one price, from the likely cost.
 *
 * @param cost what the job costs the house
 * @param terms what is added, and how sums are rounded
 * @param lines what the price is made of
 * @param band what there would be to pay by the low, the likely and the high cost, without the share for risk
 */
public record Price(Cost cost, PriceTerms terms, Lines lines, Spread<Money> band) {
    private static final BigDecimal PERCENT = new BigDecimal("0.01");

    public Price {
        Refuse.nulls(Price.class, cost, terms, lines, band);
    }

    /**
     * The lines of a price. Each is the step from one rounded sum to the next, so that they add up.
     *
     * @param work cost without travel
     * @param risk the house's share of the way from the likely to the high cost without travel
     * @param margin margin on work and risk; none on travel
     * @param travel cost of coming and going
     * @param upToMinimum what brings these up to the least that a job costs
     * @param tax tax on all these, once, rounded half up to 0.01
     */
    public record Lines(Money work, Money risk, Money margin, Money travel, Money upToMinimum, Money tax) {
        public Lines {
            Refuse.nulls(Lines.class, work, risk, margin, travel, upToMinimum, tax);
        }

        /** Work with risk and margin, as the owner sees it. */
        public Money withMargin() {
            return work.plus(risk).plus(margin);
        }

        /** All lines without tax. */
        public Money net() {
            return withMargin().plus(travel).plus(upToMinimum);
        }

        /** What there is to pay. */
        public Money total() {
            return net().plus(tax);
        }
    }

    /**
     * What of {@link Lines#withMargin} is the hire of a machine: its likely cost with margin, in steps of the rounding; risk
     * stays with the work. None where nothing is hired, or the list has no price for it.
     */
    public Optional<Money> hire() {
        BigDecimal margin = BigDecimal.ONE.add(part(terms.margin().decimal()));
        return cost.lines().stream()
                .filter(line -> line.name().equals(PriceItem.HIRE_DAY.key()))
                .map(line -> line.amount().likely().amount().multiply(margin))
                .map(amount -> new Money(rounded(amount, terms.rounding(), RoundingMode.HALF_UP), cost.currency()))
                .findFirst();
    }

    /**
     * The price of a cost.
     *
     * @param minimum the least that is asked for before tax, brought up to the next step of the rounding
     */
    static Price of(Cost cost, PriceTerms terms, BigDecimal minimum) {
        BigDecimal risk = part(terms.risk().decimal());
        return new Price(
                cost,
                terms,
                lines(cost, terms, minimum, Case.LIKELY, risk),
                new Spread<>(
                        lines(cost, terms, minimum, Case.LOW, BigDecimal.ZERO).total(),
                        lines(cost, terms, minimum, Case.LIKELY, BigDecimal.ZERO)
                                .total(),
                        lines(cost, terms, minimum, Case.HIGH, BigDecimal.ZERO).total()));
    }

    private static Lines lines(Cost cost, PriceTerms terms, BigDecimal minimum, Case which, BigDecimal risk) {
        BigDecimal work = cost.work().at(which).amount();
        BigDecimal high = cost.work().high().amount();
        BigDecimal risked = work.add(high.subtract(work).multiply(risk));
        BigDecimal priced = risked.add(risked.multiply(part(terms.margin().decimal())));
        BigDecimal travelled = priced.add(cost.travel().at(which).amount());

        BigDecimal step = terms.rounding();
        BigDecimal net =
                rounded(travelled, step, RoundingMode.HALF_UP).max(rounded(minimum, step, RoundingMode.CEILING));
        BigDecimal tax = rounded(net.multiply(part(terms.tax().decimal())), PERCENT, RoundingMode.HALF_UP);
        Steps steps = new Steps(step, cost.currency());
        return new Lines(
                steps.from(BigDecimal.ZERO, work),
                steps.from(work, risked),
                steps.from(risked, priced),
                steps.from(priced, travelled),
                steps.from(travelled, net),
                new Money(tax, cost.currency()));
    }

    private static BigDecimal part(BigDecimal percent) {
        return percent.multiply(PERCENT);
    }

    private static BigDecimal rounded(BigDecimal amount, BigDecimal step, RoundingMode mode) {
        return amount.divide(step, 0, mode).multiply(step);
    }

    /** From one rounded sum to the next. */
    private record Steps(BigDecimal step, String currency) {
        Money from(BigDecimal before, BigDecimal after) {
            return new Money(
                    rounded(after, step, RoundingMode.HALF_UP).subtract(rounded(before, step, RoundingMode.HALF_UP)),
                    currency);
        }
    }
}
