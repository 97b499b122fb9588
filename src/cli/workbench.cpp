#include "cli/workbench.h"

#include "cli/files.h"
#include "codec/job.h"
#include "tables/embedded.h"

namespace toft::cli {

Outcome<Workbench> load_workbench() {
    auto catalogue = tables::load_catalogue(tables::embedded_files());
    if (!catalogue) return failed(catalogue.error());
    auto book =
        price::read_book("demo price book", tables::embedded_text("price/demo.csv"), *catalogue);
    if (!book) return failed(book.error());
    return Workbench{std::move(*catalogue), std::move(*book)};
}

Outcome<site::Job> load_job(const Workbench& bench, const std::string& path) {
    auto text = read_input(path);
    if (!text) return failed(text.error());
    return codec::read_job(*text, bench.catalogue);
}

}  // namespace toft::cli
