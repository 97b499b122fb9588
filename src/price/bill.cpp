#include "price/bill.h"

#include "base/text.h"
#include "price/pricer.h"
#include "tables/device_words.h"

#include <fmt/format.h>

namespace toft::price {

namespace {

std::string head_words(const tables::Device& device) {
    const std::string rating = significant(device.rating.number(), 6);
    if (device.fuse()) return fmt::format("{} A {} fuse", rating, device.standard);
    return fmt::format("{}, {} kA", tables::device_words(device),
                       significant(device.breaking.value.number() / 1000, 4));
}

std::string core_words(const tables::Cable& cable) {
    return fmt::format("{}, {} × {} mm²", tables::family_word(cable.family), cable.cores,
                       significant(cable.section.number(), 6));
}

/// Writes lines down with their words.
class Writer {
public:
    static constexpr bool listens = true;

    Writer(const tables::Catalogue& catalogue, bool three) : catalogue_(catalogue), three_(three) {}

    void take(const PricedLine& line) {
        if (line.quantity == 0) return;
        bill.push_back({line.part, line.sort, row_item(catalogue_, line.row), words(line),
                        line.number, line.quantity, row_unit(line.row), line.each, line.amount});
    }

    Bill bill;

private:
    std::string words(const PricedLine& line) const {
        switch (line.row.of) {
            case BookRow::Of::device:
                return fmt::format("{}: {}{}", line.says, three_ ? "three-pole " : "",
                                   head_words(catalogue_.devices[line.row.index]));
            case BookRow::Of::cable:
                return fmt::format("{}: {}", line.says,
                                   core_words(catalogue_.cables[line.row.index]));
            case BookRow::Of::separate:
                return fmt::format(
                    "{}: {} mm²", line.says,
                    significant(catalogue_.separates[line.row.index].section.number(), 6));
            case BookRow::Of::item:
                break;
        }
        if (line.part != Part::remedies) return line.says;
        return fmt::format("{}: {}", line.says, row_item(catalogue_, line.row));
    }

    const tables::Catalogue& catalogue_;
    bool three_;
};

}  // namespace

const char* part_word(Part part) {
    switch (part) {
        case Part::house_end:
            return "house end";
        case Part::run:
            return "run";
        case Part::ground:
            return "ground";
        case Part::far_end:
            return "far end";
        case Part::test_and_paper:
            return "test and paper";
        case Part::remedies:
            return "put right first";
    }
    return "";
}

Bill bill_of(const Book& book, const study::Setting<Silent>& setting,
             const study::RunScheme& scheme, const Extras& extras) {
    Silent silent;
    Writer writer(*setting.catalogue, scheme.phases == 3);
    Pricer<Silent, Writer> pricer(silent, book, setting, scheme, writer);
    pricer.house_end();
    pricer.run();
    pricer.ground();
    pricer.far_end(extras.circuits);
    pricer.test_and_paper();
    pricer.remedies(extras.remedies);
    return std::move(writer.bill);
}

Price<Silent> price_of_bill(const Bill& bill, const Book& book) {
    Price<Silent> p;
    Pounds* const sums[parts] = {&p.house_end,      &p.run,     &p.ground, &p.far_end,
                                 &p.test_and_paper, &p.remedies};
    for (const BillLine& line : bill) {
        Pounds& sum = *sums[static_cast<int>(line.part)];
        sum = sum + line.amount;
    }
    for (Pounds* sum : sums) *sum = without_dust(*sum);
    add_up(p, book);
    return p;
}

std::vector<TaskHours> hours_by_task(const Bill& bill) {
    std::vector<TaskHours> tasks;
    for (const BillLine& line : bill) {
        if (line.sort != Sort::labour) continue;
        std::size_t i = 0;
        while (i < tasks.size() && tasks[i].task != line.says) ++i;
        if (i == tasks.size()) tasks.push_back({line.says, 0, pounds(0)});
        tasks[i].hours += line.quantity;
        tasks[i].amount = without_dust(tasks[i].amount + line.amount);
    }
    return tasks;
}

}  // namespace toft::price
