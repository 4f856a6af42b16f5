package stoneprocess.core.survey;

import java.util.List;
import java.util.Optional;
import stoneprocess.core.internal.check.Refuse;
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
    /** What has a measurable depth is at least felt. */
    private static final List<ScratchClass> FELT =
            List.of(ScratchClass.FELT_BY_NAIL, ScratchClass.FELT_BY_COIN, ScratchClass.DEEP, ScratchClass.GOUGED);

    public Damage {
        Refuse.nulls(Damage.class, kind, look, depth, share);
        if (look.isEmpty() && depth.isEmpty()) {
            boolean measured = kind.depthScale().isPresent();
            throw InvalidInputException.saying(
                    kind.key(),
                    "neither",
                    "a look, one of " + String.join(", ", Term.keys(kind.terms())) + (measured ? ", or a depth" : ""),
                    measured ? "neither a look nor a depth is told" : "no look is told");
        }
        look.ifPresent(term -> checkLook(kind, term, depth, share));
        depth.ifPresent(length -> checkDepth(kind, length));
        share.ifPresent(part -> {
            if (part.percent() > 100) {
                throw new InvalidInputException(kind.key() + ".share", part.print(), "a share from 0 to 100 %");
            }
        });
    }

    private static void checkLook(DamageKind kind, Term look, Optional<Length> depth, Optional<Share> share) {
        if (!kind.terms().contains(look)) {
            throw new InvalidInputException(
                    kind.key() + ".look", look.key(), "one of " + String.join(", ", Term.keys(kind.terms())));
        }
        depth.filter(length -> length.millimetres() > 0).ifPresent(length -> {
            if (look == ScratchClass.NONE) {
                throw new InvalidInputException(
                        kind.key() + ".depth", length.print(), "no depth where the look is none");
            }
            if (look == ScratchClass.SEEN) {
                throw new InvalidInputException(
                        kind.key() + ".depth", length.print(), "no depth where a line is seen but not felt");
            }
        });
        share.filter(part -> part.percent() > 0 && look.equals(kind.none())).ifPresent(part -> {
            throw new InvalidInputException(kind.key() + ".share", part.print(), "no share where the look is none");
        });
    }

    private static void checkDepth(DamageKind kind, Length depth) {
        if (kind.depthScale().isEmpty()) {
            throw new InvalidInputException(
                    kind.key() + ".depth", depth.print(), "a look; this kind is not measured by depth");
        }
        if (depth.millimetres() > 100) {
            throw new InvalidInputException(kind.key() + ".depth", depth.print(), "a depth from 0 to 100 mm");
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

    /**
     * How bad it is, as a position in {@link DamageKind#terms}, 0 for none: by look, by the measured depth on its scale,
     * the worse of both where both are given.
     *
     * @throws InvalidInputException when the scale's limits are missing or do not rise
     */
    public int severity(Parameters parameters) {
        int byLook = look.map(term -> kind.terms().indexOf(term)).orElse(0);
        int byDepth =
                depth.map(length -> depthClass(length, parameters).ordinal()).orElse(0);
        return Math.max(byLook, byDepth);
    }

    private Enum<?> depthClass(Length length, Parameters parameters) {
        boolean noScratch = kind == DamageKind.SCRATCHES && length.millimetres() == 0;
        return noScratch ? ScratchClass.NONE : scale(kind, parameters).classify(length);
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
            case SCRATCHES -> Scale.of("scratch-depth", FELT, parameters);
            case LIPPAGE -> Scale.of("lippage", LippageClass.class, parameters);
            case WAVINESS -> Scale.of("waviness", WavinessClass.class, parameters);
            default -> throw new IllegalArgumentException(kind.key() + " is not measured by depth");
        };
    }
}
