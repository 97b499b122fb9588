#pragma once
// The demo job with the tables and prices it is designed with, loaded once for a bench.

#include "../tests/support/examples.h"

namespace toft::bench {

struct Demo {
    tables::Catalogue catalogue;
    price::Book book;
    site::Job job;
};

inline const Demo& demo() {
    static const Demo loaded = [] {
        tables::Catalogue catalogue =
            support::need(tables::load_catalogue(tables::embedded_files()), "the tables");
        price::Book book = support::demo_book(catalogue);
        site::Job job = support::example_job("demo", catalogue);
        return Demo{std::move(catalogue), std::move(book), std::move(job)};
    }();
    return loaded;
}

}  // namespace toft::bench
