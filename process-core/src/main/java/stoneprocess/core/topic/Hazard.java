package stoneprocess.core.topic;

import stoneprocess.core.term.Term;

/** What can hurt somebody or something. */
public enum Hazard implements Term {
    /** Respirable crystalline silica. */
    SILICA_DUST,

    /** Silica and resin in the dust of an agglomerate. */
    AGGLOMERATE_DUST,

    /** Fibrous minerals in the stone. */
    FIBROUS_STONE,

    /** Asbestos or lead in adhesive, levelling layers and residues. */
    HAZARDOUS_LAYER,

    /** Electricity near water. */
    ELECTRICITY,

    /** Slips on the wet floor during the work. */
    WET_FLOOR,

    /** Carbon monoxide of an engine. */
    CARBON_MONOXIDE,

    /** Noise of the machines. */
    NOISE,

    /** Vibration and kickback from hand tools. */
    VIBRATION,

    /** Lifting and moving machines. */
    LIFTING,

    /** Strippers: caustic, some with solvent. */
    CAUSTIC_STRIPPER,

    /** Poultices with solvent, peroxide or reducing agent. */
    POULTICE_CHEMICALS,

    /** Sealer vapour. */
    SEALER_VAPOUR,

    /** Densifiers: strongly alkaline. */
    DENSIFIER_ALKALI,

    /** Oxide powder dust. */
    OXIDE_DUST,

    /** Acid for the drop test. */
    TEST_ACID,

    /** Slurry on skin and in drains. */
    SLURRY,

    /** Caustic cement slurry. */
    ALKALINE_SLURRY,

    /** Slips on the finished floor when wet. */
    WET_SLIP_IN_USE,

    /** Loss of historic fabric. */
    HISTORIC_FABRIC,

    /** A floor that may not carry the machine. */
    FLOOR_LOAD,

    /** Occupied premises. */
    BYSTANDERS,

    /** Resin fillers and cement grout. */
    FILLERS,

    /** Wet mortar, adhesive and grout under pieces that are laid anew. */
    MORTAR,

    /** Nobody near to help. */
    LONE_WORK
}
