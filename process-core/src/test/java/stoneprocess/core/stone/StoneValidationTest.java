package stoneprocess.core.stone;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.EnumSet;
import java.util.List;
import java.util.OptionalDouble;
import java.util.Set;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import stoneprocess.core.internal.table.Tsv;

/** Stone facts against published figures; each test names its source. */
class StoneValidationTest {
    /** ASTM C615, C503, C568, C616, C629, C1527, C1526. */
    @Test
    void purchase_limits_are_those_of_the_astm_specifications() {
        List<Tsv.Row> published = Tsv.read(StoneValidationTest.class, "astm-limits.tsv");
        List<StoneCatalogue.PurchaseLimit> limits = StoneCatalogue.standard().purchaseLimits();
        assertThat(limits).hasSameSizeAs(published);
        for (Tsv.Row row : published) {
            assertThat(limits).anySatisfy(limit -> {
                assertThat(limit.stone()).isEqualTo(row.get("stone"));
                assertThat(limit.kind()).isEqualTo(row.get("kind"));
                assertThat(limit.absorptionMaxPercent()).isEqualTo(value(row, "absorption"));
                assertThat(limit.densityMinKgPerM3()).isEqualTo(value(row, "density"));
                assertThat(limit.compressiveMinMpa()).isEqualTo(value(row, "compressive"));
                assertThat(limit.abrasionMinHa()).isEqualTo(value(row, "abrasion"));
                assertThat(limit.source().publisher()).isEqualTo(row.get("spec"));
                assertThat(limit.source().grade().key()).isEqualTo(row.get("mark"));
            });
        }
    }

    private static OptionalDouble value(Tsv.Row row, String column) {
        return row.get(column).isEmpty() ? OptionalDouble.empty() : OptionalDouble.of(row.number(column));
    }

    /** Kirk, Slippery Rock Gazette, January 2020, p. 30: calcite on the solid, dolomite on powder, silicates not. */
    @Test
    void calcite_fizzes_on_the_solid_dolomite_on_powder_and_silicates_not() {
        assertThat(Traits.of(Family.CALCITE_MARBLE).acid()).containsExactly(AcidReaction.STRONG);
        assertThat(Traits.of(Family.DOLOMITE_MARBLE).acid()).containsExactly(AcidReaction.SLOW);
        for (Family silicate : List.of(Family.GRANITE, Family.PORCELAIN)) {
            assertThat(Traits.of(silicate).acid()).containsExactly(AcidReaction.NONE);
        }
    }

    /** Mineralogy, from memory: gypsum is a sulphate and does not fizz; only carbonate in it does. */
    @Test
    void an_acid_drop_without_fizz_does_not_rule_gypsum_out() {
        assertThat(Traits.of(Family.GYPSUM).acid()).contains(AcidReaction.NONE).doesNotContain(AcidReaction.STRONG);
    }

    /** Common practice, no source: rocks of calcite and cement-bound floors fizz, whatever the rest of them is. */
    @Test
    void all_floors_of_calcite_and_of_cement_fizz_on_the_solid() {
        for (Family family : List.of(
                Family.CALCITE_MARBLE,
                Family.LIMESTONE,
                Family.TRAVERTINE,
                Family.ONYX,
                Family.CEMENT_TERRAZZO,
                Family.ENCAUSTIC_CEMENT,
                Family.CONCRETE)) {
            assertThat(Traits.of(family).acid()).as(family.key()).containsExactly(AcidReaction.STRONG);
        }
    }

    /** The Mohs scale: talc 1, gypsum 2, calcite 3, dolomite 3.5-4, serpentine 2.5-4, orthoclase 6, quartz 7. */
    @ParameterizedTest
    @CsvSource({
        "SOAPSTONE, 1, 1",
        "GYPSUM, 2, 2",
        "CALCITE_MARBLE, 3, 3",
        "TRAVERTINE, 3, 3",
        "ONYX, 3, 3",
        "ENGINEERED_MARBLE, 3, 3",
        "LIMESTONE, 3, 3",
        "DOLOMITE_MARBLE, 3.5, 4",
        "SERPENTINE, 2.5, 4",
        "GRANITE, 6, 7",
        "QUARTZITE, 7, 7",
        "SANDSTONE, 7, 7",
        "ENGINEERED_QUARTZ, 7, 7",
        "CEMENT_TERRAZZO, 3, 7",
    })
    void the_hardness_of_the_ruling_minerals_lies_within_the_familys(Family family, double low, double high) {
        assertThat(Traits.of(family).mohsLow()).isLessThanOrEqualTo(low);
        assertThat(Traits.of(family).mohsHigh()).isGreaterThanOrEqualTo(high);
    }

    /** Mohs: a steel scriber is about 5.5. Families that it always scratches are no harder at their softest. */
    @Test
    void a_scriber_scratches_what_is_softer_than_steel() {
        for (Family family : Family.values()) {
            Traits traits = Traits.of(family);
            if (!traits.hardness().contains(Hardness.HARD)) {
                assertThat(traits.mohsLow()).as(family.key()).isLessThan(5.5);
            }
        }
    }

    /** The Mohs scale: gypsum 2, calcite 3, dolomite 3.5-4, quartz 7; serpentine 2.5 to 5 in the trade. */
    @Test
    void hardness_follows_the_mohs_scale_of_the_ruling_mineral() {
        assertThat(Traits.of(Family.GYPSUM).mohsHigh()).isEqualTo(2);
        assertThat(Traits.of(Family.CALCITE_MARBLE).mohsLow()).isEqualTo(3);
        assertThat(Traits.of(Family.DOLOMITE_MARBLE).mohsLow()).isEqualTo(3.5);
        assertThat(Traits.of(Family.DOLOMITE_MARBLE).mohsHigh()).isEqualTo(4);
        assertThat(Traits.of(Family.QUARTZITE).mohsHigh()).isEqualTo(7);
        for (Family family : Family.values()) {
            Traits traits = Traits.of(family);
            assertThat(traits.mohsLow()).as(family.key()).isLessThanOrEqualTo(traits.mohsHigh());
            if (traits.hardness().equals(Set.of(Hardness.HARD))) {
                assertThat(traits.mohsLow()).as(family.key()).isGreaterThanOrEqualTo(5);
            }
        }
    }

    /**
     * HSENI, Safe Work Australia, CPWR: sandstone and quartzite over 70 %, concrete 25-70, granite 20-45, slate 20-40,
     * basalt, limestone and marble up to 5, engineered stone up to 97.
     */
    @Test
    void silica_classes_follow_the_published_mass_shares() {
        for (Family family : List.of(Family.SANDSTONE, Family.QUARTZITE, Family.ENGINEERED_QUARTZ)) {
            assertThat(Traits.of(family).silica()).as(family.key()).containsExactly(SilicaContent.HIGH);
        }
        for (Family family : List.of(Family.CONCRETE, Family.GRANITE, Family.SLATE)) {
            assertThat(Traits.of(family).silica()).as(family.key()).containsExactly(SilicaContent.MEDIUM);
        }
        for (Family family : List.of(Family.BASALT_GABBRO, Family.LIMESTONE, Family.CALCITE_MARBLE)) {
            assertThat(Traits.of(family).silica()).as(family.key()).containsExactly(SilicaContent.LOW);
        }
    }

    /** Italian decree of 14 May 1996, Annex 4: serpentinites and talc schists may hold chrysotile. */
    @Test
    void serpentine_and_talc_rock_may_hold_fibres_and_nothing_else_is_listed_so() {
        assertThat(Traits.familiesWith(FibreRisk.POSSIBLE, Traits::fibres))
                .isEqualTo(EnumSet.of(Family.SERPENTINE, Family.SOAPSTONE));
    }

    @Test
    void every_family_has_a_name_and_every_name_a_family() {
        EnumSet<Family> named = EnumSet.noneOf(Family.class);
        StoneCatalogue.standard().all().forEach(stone -> {
            assertThat(stone.families()).as(stone.name()).isNotEmpty();
            named.addAll(stone.families());
        });
        assertThat(named).isEqualTo(EnumSet.allOf(Family.class));
    }
}
