package stoneprocess.core.topic;

import stoneprocess.core.term.Term;

/** Grit numbers at which a sequence may end, as labels of the usual sequence, coarse to fine. */
public enum LastGrit implements Term {
    G120,
    G200,
    G400,
    G800,
    G1500,
    G3000,
    G6000;

    /** The grit number, as the key gives it. */
    public int number() {
        return Integer.parseInt(key());
    }

    @Override
    public String key() {
        return name().substring(1);
    }
}
