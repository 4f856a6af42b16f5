package stoneprocess.core.topic;

import stoneprocess.core.term.Term;

/** Grit numbers at which a sequence may end, as labels of the usual sequence, coarse to fine. */
public enum LastGrit implements Term {
    G120(120),
    G200(200),
    G400(400),
    G800(800),
    G1500(1500),
    G3000(3000),
    G6000(6000);

    private final int number;

    LastGrit(int number) {
        this.number = number;
    }

    public int number() {
        return number;
    }

    @Override
    public String key() {
        return Integer.toString(number);
    }
}
