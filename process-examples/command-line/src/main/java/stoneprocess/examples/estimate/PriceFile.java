package stoneprocess.examples.estimate;

import java.util.Arrays;
import java.util.Optional;
import java.util.function.Function;
import stoneprocess.core.estimate.PriceItem;
import stoneprocess.core.estimate.PriceList;
import stoneprocess.core.problem.InvalidInputException;
import stoneprocess.core.quantity.Share;
import stoneprocess.core.tool.MachineClass;

/**
 * A price list as lines {@code name = value}: {@code currency}, then any of {@code labour-hour}, {@code resin-set} and
 * the other {@link PriceItem}s, {@code machine-hour.single-disc}, {@code minimum-charge}, {@code night-factor},
 * {@code whole-sets} and {@code exclusions}, the last with semicolons between.
 */
public final class PriceFile {
    private PriceFile() {}

    /**
     * Reads a price list.
     *
     * @throws InvalidInputException for a list without a currency, a name that no list has, or a price that is no number
     */
    public static PriceList read(String text) {
        Settings settings = Settings.read("prices", text);
        PriceList prices = PriceList.empty(settings.get("currency")
                .orElseThrow(
                        () -> new InvalidInputException(settings.path("currency"), "missing", "currency = a label")));
        for (PriceItem item : PriceItem.values()) {
            prices = amount(settings, item.key()).map(withItem(prices, item)).orElse(prices);
        }
        for (MachineClass machine : MachineClass.values()) {
            prices = amount(settings, "machine-hour." + machine.key())
                    .map(withMachine(prices, machine))
                    .orElse(prices);
        }
        prices = amount(settings, "minimum-charge")
                .map(prices::withMinimumCharge)
                .orElse(prices);
        Optional<String> night = settings.get("night-factor");
        if (night.isPresent()) {
            prices = prices.withNightFactor(
                    Amounts.quantity(night.get(), settings.path("night-factor"), Share.class, "150 %"));
        }
        Optional<String> whole = settings.get("whole-sets");
        if (whole.isPresent() && !whole.get().equals("yes") && !whole.get().equals("no")) {
            throw new InvalidInputException(settings.path("whole-sets"), whole.get(), "yes or no");
        }
        if (whole.equals(Optional.of("yes"))) {
            prices = prices.withWholeSets();
        }
        Optional<String> exclusions = settings.get("exclusions");
        if (exclusions.isPresent()) {
            prices = prices.withExclusions(Arrays.stream(exclusions.get().split(";"))
                    .map(String::strip)
                    .filter(exclusion -> !exclusion.isEmpty())
                    .toList());
        }
        settings.requireNoOthers();
        return prices;
    }

    private static Function<String, PriceList> withItem(PriceList prices, PriceItem item) {
        return amount -> prices.with(item, amount);
    }

    private static Function<String, PriceList> withMachine(PriceList prices, MachineClass machine) {
        return amount -> prices.withMachineHour(machine, amount);
    }

    private static Optional<String> amount(Settings settings, String name) {
        Optional<String> amount = settings.get(name);
        amount.filter(text -> !text.matches("\\d{1,12}(\\.\\d{1,4})?")).ifPresent(text -> {
            throw new InvalidInputException(settings.path(name), text, "an amount such as 42.50, without a currency");
        });
        return amount;
    }
}
