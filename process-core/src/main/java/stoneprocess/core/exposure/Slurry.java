package stoneprocess.core.exposure;

import java.util.Objects;
import stoneprocess.core.parameter.Parameters;
import stoneprocess.core.problem.InvalidInputException;
import stoneprocess.core.quantity.Acidity;

/**
 * Classifies slurry water by its pH: corrosive waste at 2 and below or at 12.5 and above (40 CFR 261.22), not to a
 * sewer below 5 (40 CFR 403.5). Local rules decide the rest. Immutable and safe to share between threads.
 */
public final class Slurry {
    private final Parameters parameters;

    private Slurry(Parameters parameters) {
        this.parameters = parameters;
    }

    /** Reads its limits from the parameters named {@code slurry-ph.}. */
    public static Slurry of(Parameters parameters) {
        return new Slurry(Objects.requireNonNull(parameters, "parameters"));
    }

    /**
     * The class of a measured pH. Exactly 2 and exactly 12.5 are corrosive; exactly 5 is not too acid.
     *
     * @param measured measured pH, from 0 to 14 pH
     * @throws InvalidInputException above 14 pH
     */
    public SlurryWater classify(Acidity measured) {
        requireScale(measured);
        Limit<Acidity> acid = limit("corrosive-acid");
        Limit<Acidity> sewer = limit("sewer-lowest");
        Limit<Acidity> alkali = limit("corrosive-alkali");
        if (measured.compareTo(acid.value()) <= 0) {
            return new SlurryWater(measured, SlurryClass.CORROSIVE_ACID, acid);
        }
        if (measured.compareTo(alkali.value()) >= 0) {
            return new SlurryWater(measured, SlurryClass.CORROSIVE_ALKALI, alkali);
        }
        if (measured.compareTo(sewer.value()) < 0) {
            return new SlurryWater(measured, SlurryClass.TOO_ACID_FOR_SEWER, sewer);
        }
        boolean nearerAlkali = alkali.value().ph() - measured.ph()
                < measured.ph() - sewer.value().ph();
        return new SlurryWater(measured, SlurryClass.SEWER_BY_LEAVE_ONLY, nearerAlkali ? alkali : sewer);
    }

    static void requireScale(Acidity measured) {
        if (measured.ph() > 14) {
            throw new InvalidInputException("slurry.ph", measured.print(), "0 to 14 pH");
        }
    }

    private Limit<Acidity> limit(String name) {
        return Limit.of(parameters, "slurry-ph." + name, Acidity.class, Role.WASTE_AUTHORITY);
    }
}
