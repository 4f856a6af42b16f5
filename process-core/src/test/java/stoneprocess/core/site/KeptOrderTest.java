package stoneprocess.core.site;

import static org.assertj.core.api.Assertions.assertThat;

import java.math.BigDecimal;
import java.util.ArrayList;
import java.util.Collections;
import java.util.LinkedHashMap;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import org.junit.jupiter.api.Test;
import stoneprocess.core.estimate.Estimate;
import stoneprocess.core.estimate.Estimator;
import stoneprocess.core.estimate.PriceItem;
import stoneprocess.core.estimate.PriceList;
import stoneprocess.core.estimate.Remark;
import stoneprocess.core.parameter.Parameters;
import stoneprocess.core.quantity.Range;
import stoneprocess.core.quantity.Share;
import stoneprocess.core.quantity.TimeSpan;
import stoneprocess.core.tool.MachineClass;

/** What is given in an order is kept in it, so that a text is the same in every run of the Java machine. */
class KeptOrderTest {
    @Test
    void hours_of_work_stay_in_the_order_given() {
        Map<String, Range<TimeSpan>> times = new LinkedHashMap<>();
        for (String work : List.of("regrout", "fill-cracks", "lift", "mask", "dry", "haul", "a", "z", "m")) {
            times.put(work, Range.of(new TimeSpan(1), new TimeSpan(2)));
        }
        JobOptions options = new JobOptions(Optional.empty(), Optional.empty(), Optional.empty(), times);
        assertThat(List.copyOf(options.times().keySet())).isEqualTo(List.copyOf(times.keySet()));
    }

    @Test
    void prices_stay_in_the_order_given() {
        List<PriceItem> items = new ArrayList<>(List.of(PriceItem.values()));
        Collections.reverse(items);
        List<MachineClass> machines = new ArrayList<>(List.of(MachineClass.values()));
        Collections.reverse(machines);
        PriceList list = PriceList.empty("coin");
        for (PriceItem item : items) {
            list = list.with(item, "1");
        }
        for (MachineClass machine : machines) {
            list = list.withMachineHour(machine, "2");
        }
        assertThat(List.copyOf(list.prices().keySet())).isEqualTo(items);
        assertThat(List.copyOf(list.machineHours().keySet())).isEqualTo(machines);
        PriceList copy = new PriceList(
                "coin",
                list.prices(),
                list.machineHours(),
                BigDecimal.ZERO,
                new Share(100),
                false,
                List.of(),
                Optional.empty());
        assertThat(List.copyOf(copy.prices().keySet())).isEqualTo(items);
    }

    @Test
    void remarks_stand_in_the_order_in_which_they_are_declared() {
        List<Remark> declared = List.of(Remark.values());
        List<Remark> backwards = new ArrayList<>(declared);
        Collections.reverse(backwards);
        Set<Remark> remarks = new LinkedHashSet<>(backwards);
        Estimate usual = new Estimator(Parameters.standard())
                .estimate(PlannedJob.of(Plans.marble().recommendation(), JobOptions.defaults())
                        .job());
        Estimate estimate = new Estimate(
                usual.job(),
                usual.lines(),
                usual.calendar(),
                usual.paidHours(),
                usual.consumables(),
                usual.plausibility(),
                remarks);
        assertThat(List.copyOf(estimate.remarks())).isEqualTo(declared);
    }
}
