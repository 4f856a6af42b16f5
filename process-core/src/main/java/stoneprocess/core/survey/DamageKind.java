package stoneprocess.core.survey;

import java.util.List;
import java.util.Optional;
import org.jspecify.annotations.Nullable;
import stoneprocess.core.term.Term;

/** Kinds of damage. Each zone of a survey answers each kind: none, how bad, or unknown. */
public enum DamageKind implements Term {
    /** Lines, by look or depth; share of the zone's area. */
    SCRATCHES(ScratchClass.class, "scratch-depth", DamageKind.AREA, HowFound.TOUCH),
    /** Dullness without lines; share of the zone's area. */
    WEAR(WearClass.class, null, DamageKind.AREA, HowFound.LOOK),
    /** Acid marks; share of the zone's area. */
    ETCHES(EtchClass.class, null, DamageKind.AREA, HowFound.LOOK),
    /** Edges that stand over their neighbours, by height; share of the zone's joints. */
    LIPPAGE(LippageClass.class, "lippage", DamageKind.JOINTS, HowFound.MEASURE),
    /** Departure from a 3 m straightedge, by depth; share of the zone's area. */
    WAVINESS(WavinessClass.class, "waviness", DamageKind.AREA, HowFound.MEASURE),
    /** Cracks, chips and open holes; share of the zone's area. */
    CRACKS(Presence.class, null, DamageKind.AREA, HowFound.LOOK),
    /** Stains of oil or grease; share of the zone's area. */
    OIL_STAINS(Presence.class, null, DamageKind.AREA, HowFound.LOOK),
    /** Stains of food, leaves and other organic matter; share of the zone's area. */
    ORGANIC_STAINS(Presence.class, null, DamageKind.AREA, HowFound.LOOK),
    /** Stains of rust; share of the zone's area. */
    RUST_STAINS(Presence.class, null, DamageKind.AREA, HowFound.LOOK),
    /** Efflorescence; share of the zone's area. */
    SALTS(Presence.class, null, DamageKind.AREA, HowFound.LOOK),

    /** Flaking and spalling of the surface; share of the zone's area. */
    FLAKING(Presence.class, null, DamageKind.AREA, HowFound.LOOK);

    /** What a share is a share of. */
    public static final String AREA = "area";

    /** What a share of lippage is a share of. */
    public static final String JOINTS = "joints";

    private final Class<? extends Enum<?>> classes;
    private final Optional<String> depthScale;
    private final String shareOf;
    private final HowFound howFound;
    private final List<Term> terms;

    <E extends Enum<E> & Term> DamageKind(
            Class<E> classes, @Nullable String depthScale, String shareOf, HowFound howFound) {
        this.classes = classes;
        this.depthScale = Optional.ofNullable(depthScale);
        this.shareOf = shareOf;
        this.howFound = howFound;
        this.terms = List.of(classes.getEnumConstants());
    }

    /** The enum that says how bad; its first constant is "none". */
    public Class<? extends Enum<?>> classes() {
        return classes;
    }

    /** The scale that turns a measured depth or height into a class, for the kinds that are measured. */
    public Optional<String> depthScale() {
        return depthScale;
    }

    /** {@link #AREA} or {@link #JOINTS}. */
    public String shareOf() {
        return shareOf;
    }

    /** The quickest way to find it out. */
    public HowFound howFound() {
        return howFound;
    }

    /** The class that means looked for and not there. */
    public Term none() {
        return terms.get(0);
    }

    /** All classes, mildest first. */
    public List<Term> terms() {
        return terms;
    }
}
