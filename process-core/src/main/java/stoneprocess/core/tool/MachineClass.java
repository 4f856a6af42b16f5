package stoneprocess.core.tool;

import stoneprocess.core.term.Term;

/** Classes of machine, told apart by how they move and how heavy they are. */
public enum MachineClass implements Term {
    /** Hand-held 125 mm tool for edges, stairs and corners. */
    EDGE_TOOL,

    /** Slow-speed single-disc floor machine. */
    SINGLE_DISC,

    /** Heavy machine with planetary heads and rigid plates. */
    PLANETARY,

    /** Electric high-speed burnisher: upkeep only. */
    BURNISHER,

    /** High-speed or grinding machine with a propane engine. */
    PROPANE_MACHINE,

    /** Automatic scrubber that lays water and picks it up. */
    SCRUBBER
}
