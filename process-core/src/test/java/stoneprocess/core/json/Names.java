package stoneprocess.core.json;

import net.jqwik.api.Arbitraries;
import net.jqwik.api.Arbitrary;

/** Names and titles as people of several scripts write them, with all that JSON has to escape but line ends. */
final class Names {
    private Names() {}

    static Arbitrary<String> upTo(int longest) {
        return Arbitraries.strings()
                .withCharRange(' ', '~')
                .withCharRange('\u00a1', '\u00ac')
                .withCharRange('\u00ae', '\u017f')
                .withCharRange('\u0391', '\u03a1')
                .withCharRange('\u0620', '\u064a')
                .withCharRange('\u4e00', '\u9fa5')
                .ofMinLength(1)
                .ofMaxLength(longest)
                .filter(name -> !name.isBlank());
    }
}
