package stoneprocess.core.survey;

import java.util.List;
import java.util.Optional;
import stoneprocess.core.parameter.Parameters;
import stoneprocess.core.parameter.Scale;
import stoneprocess.core.problem.InvalidInputException;
import stoneprocess.core.quantity.Length;
import stoneprocess.core.quantity.Share;
import stoneprocess.core.term.Term;

/**
 * What was found of one kind of damage in one zone. At least one of look and depth is given.
 *
 * @param kind the kind
 * @param look how bad it looks and feels
 * @param depth measured depth of a scratch, height of a lippage, or depth under a 3 m straightedge
 * @param share share of the zone's area or joints that has it; unknown is empty
 */
public record Damage(DamageKind kind, Optional<Term> look, Optional<Length> depth, Optional<Share> share) {
    public Damage {
        if (look.isEmpty() && depth.isEmpty()) {
            throw new InvalidInputException(kind.key(), "neither", "a look, a depth, or none");
        }
        if (look.isPresent() && !kind.terms().contains(look.get())) {
            throw new InvalidInputException(
                    kind.key() + ".look", look.get().key(), "one of " + String.join(", ", Term.keys(kind.terms())));
        }
        if (depth.isPresent() && kind.depthScale().isEmpty()) {
            throw new InvalidInputException(
                    kind.key() + ".depth", depth.get().print(), "a look; this kind is not measured by depth");
        }
        if (depth.isPresent() && depth.get().millimetres() > 100) {
            throw new InvalidInputException(kind.key() + ".depth", depth.get().print(), "a depth from 0 to 100 mm");
        }
        boolean none = look.isPresent() && look.get().equals(kind.none());
        if (none && depth.isPresent() && depth.get().millimetres() > 0) {
            throw new InvalidInputException(
                    kind.key() + ".depth", depth.get().print(), "no depth where the look is none");
        }
        boolean onlySeen = look.isPresent() && look.get() == ScratchClass.SEEN;
        if (onlySeen && depth.isPresent() && depth.get().millimetres() > 0) {
            throw new InvalidInputException(
                    kind.key() + ".depth", depth.get().print(), "no depth where a line is seen but not felt");
        }
        if (none && share.isPresent() && share.get().percent() > 0) {
            throw new InvalidInputException(
                    kind.key() + ".share", share.get().print(), "no share where the look is none");
        }
        if (share.isPresent() && share.get().percent() > 100) {
            throw new InvalidInputException(kind.key() + ".share", share.get().print(), "a share from 0 to 100 %");
        }
    }

    /** Looked for and not there. */
    public static Damage none(DamageKind kind) {
        return new Damage(kind, Optional.of(kind.none()), Optional.empty(), Optional.empty());
    }

    /** By look, over a share of the zone. */
    public static Damage seen(DamageKind kind, Term look, Share share) {
        return new Damage(kind, Optional.of(look), Optional.empty(), Optional.of(share));
    }

    /** By measured depth, over a share of the zone. */
    public static Damage measured(DamageKind kind, Length depth, Share share) {
        return new Damage(kind, Optional.empty(), Optional.of(depth), Optional.of(share));
    }

    /** How bad it is: the measured depth on its scale, else the look; the worse of both where both are given. */
    public int severity(Parameters parameters) {
        int byLook = look.map(term -> kind.terms().indexOf(term)).orElse(0);
        int byDepth = depth.map(length -> depthClass(length, parameters)).orElse(0);
        return Math.max(byLook, byDepth);
    }

    private int depthClass(Length length, Parameters parameters) {
        // What has a measurable depth is at least felt, or there is none.
        boolean noScratch = kind == DamageKind.SCRATCHES && length.millimetres() == 0;
        return noScratch ? 0 : scale(kind, parameters).classify(length).ordinal();
    }

    /**
     * Refuses numbers whose scales of depth do not rise.
     *
     * @throws InvalidInputException naming the first limit that does not rise
     */
    public static void requireScales(Parameters parameters) {
        for (DamageKind measured : DamageKind.values()) {
            if (measured.depthScale().isPresent()) {
                scale(measured, parameters);
            }
        }
    }

    private static Scale<?> scale(DamageKind kind, Parameters parameters) {
        return switch (kind) {
            case SCRATCHES ->
                Scale.of(
                        "scratch-depth",
                        List.of(
                                ScratchClass.FELT_BY_NAIL,
                                ScratchClass.FELT_BY_COIN,
                                ScratchClass.DEEP,
                                ScratchClass.GOUGED),
                        parameters);
            case LIPPAGE -> Scale.of("lippage", LippageClass.class, parameters);
            case WAVINESS -> Scale.of("waviness", WavinessClass.class, parameters);
            default -> throw new IllegalArgumentException(kind + " is not measured by depth");
        };
    }
}
