package stoneprocess.core.json;

import org.jspecify.annotations.Nullable;
import tools.jackson.core.SerializableString;
import tools.jackson.core.io.CharacterEscapes;
import tools.jackson.core.io.SerializedString;

/**
 * Escapes, beyond what JSON must, the characters that control a terminal or turn the direction of writing: JSON that is
 * printed can be shown as it is. What is read back is the same.
 */
final class UnseenEscapes extends CharacterEscapes {
    private static final long serialVersionUID = 1L;
    private static final int DELETE = 0x7F;

    @Override
    public int[] getEscapeCodesForAscii() {
        int[] codes = standardAsciiEscapesForJSON();
        codes[DELETE] = ESCAPE_STANDARD;
        return codes;
    }

    @Override
    public @Nullable SerializableString getEscapeSequence(int character) {
        return switch (Character.getType(character)) {
            case Character.CONTROL, Character.FORMAT, Character.LINE_SEPARATOR, Character.PARAGRAPH_SEPARATOR ->
                new SerializedString(String.format("\\u%04X", character));
            default -> null;
        };
    }
}
