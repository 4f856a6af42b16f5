package stoneprocess.core.json;

import java.util.List;
import stoneprocess.core.answer.WhatElse;
import stoneprocess.core.problem.InvalidInputException;
import stoneprocess.core.problem.MissingLibraryException;
import stoneprocess.core.survey.HowFound;

/** What is worth finding out, as JSON. Lossless and versioned. */
public final class WhatElseJson {
    private static final String WHAT = "what-else";

    private WhatElseJson() {}

    /**
     * Prints an answer.
     *
     * @throws MissingLibraryException when Jackson is not on the class path
     */
    public static String print(WhatElse whatElse) {
        return Jackson.with(() -> Tree.print(new Fields()
                .put("format", WhatElse.FORMAT)
                .put("open", Fields.list(whatElse.open(), WhatElseJson::tree))
                .put("rulebase", RecommendationJson.tree(whatElse.rulebase()))
                .tree()));
    }

    /**
     * Reads an answer back; it equals the one that was printed.
     *
     * @throws InvalidInputException with one line that names the field, the value and what would be accepted
     * @throws MissingLibraryException when Jackson is not on the class path
     */
    public static WhatElse read(String json) {
        return Jackson.with(() -> read(new Node("", Tree.parse(json, WHAT))));
    }

    private static WhatElse read(Node root) {
        root.form(WHAT, WhatElse.FORMAT).only(List.of("format", "open", "rulebase"));
        return new WhatElse(root.get("open").list(WhatElseJson::open), RecommendationJson.stamp(root.get("rulebase")));
    }

    private static Object tree(WhatElse.Open open) {
        return new Fields()
                .put("field", open.field())
                .put("topics", open.topics())
                .put("how-found", open.howFound().key())
                .tree();
    }

    private static WhatElse.Open open(Node node) {
        node.only(List.of("field", "topics", "how-found"));
        return new WhatElse.Open(
                node.get("field").text(),
                node.get("topics").texts(),
                node.get("how-found").term(HowFound.class));
    }
}
