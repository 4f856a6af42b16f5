package stoneprocess.rules.feature;

import stoneprocess.core.term.Term;

/**
 * A fact of which there is one for each constant of an enum, such as each class of machine.
 *
 * @param <E> the classes
 */
public interface OneOfMany<E extends Enum<E> & Term> extends Feature<E> {
    /** The constant that this one is about. */
    Term which();
}
