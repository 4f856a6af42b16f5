package stoneprocess.rules.feature;

import java.util.Set;
import stoneprocess.core.internal.check.Refuse;
import stoneprocess.core.survey.Extractor;
import stoneprocess.core.survey.Presence;
import stoneprocess.core.term.Term;
import stoneprocess.core.tool.MachineClass;
import stoneprocess.core.tool.Powder;
import stoneprocess.core.topic.LastGrit;

/** What is on hand. */
public final class Equipment {
    private Equipment() {}

    /** Dust extraction. */
    public record ExtractorOnHand(Set<Extractor> mayBe) implements Feature<Extractor> {
        public ExtractorOnHand {
            mayBe = Classes.copy(mayBe);
        }
    }

    /** A wet vacuum. */
    public record WetVacuumOnHand(Set<Presence> mayBe) implements Feature<Presence> {
        public WetVacuumOnHand {
            mayBe = Classes.copy(mayBe);
        }
    }

    /**
     * Whether a class of machine is on hand. There is one fact for each class.
     *
     * @param machine the class of machine
     * @param mayBe present, none, or both when nobody said
     */
    public record MachineOnHand(MachineClass machine, Set<Presence> mayBe) implements OneOfMany<Presence> {
        public MachineOnHand {
            Refuse.nulls(MachineOnHand.class, machine, mayBe);
            mayBe = Classes.copy(mayBe);
        }

        @Override
        public Term which() {
            return machine;
        }
    }

    /**
     * Whether a kind of powder is on hand. There is one fact for each kind.
     *
     * @param powder the kind of powder
     * @param mayBe present, none, or both when nobody said
     */
    public record PowderOnHand(Powder powder, Set<Presence> mayBe) implements OneOfMany<Presence> {
        public PowderOnHand {
            Refuse.nulls(PowderOnHand.class, powder, mayBe);
            mayBe = Classes.copy(mayBe);
        }

        @Override
        public Term which() {
            return powder;
        }
    }

    /** Whether any grit is known to be on hand. */
    public record GradesOnHand(Set<Presence> mayBe) implements Feature<Presence> {
        public GradesOnHand {
            mayBe = Classes.copy(mayBe);
        }
    }

    /** The finest resin grit on hand, as the grit at which a sequence could end; the coarsest of these where there is none. */
    public record FinestOnHand(Set<LastGrit> mayBe) implements Feature<LastGrit> {
        public FinestOnHand {
            mayBe = Classes.copy(mayBe);
        }
    }
}
