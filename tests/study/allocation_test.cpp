// The search works out millions of schemes silently: not one of them may touch the heap. This file
// replaces the program's operator new by one that counts.

#include "study/figures.h"
#include "support/catalogue.h"
#include "support/draws.h"
#include "support/jobs.h"

#include <gtest/gtest.h>
#include <rapidcheck/gtest.h>

#include <atomic>
#include <cstdlib>
#include <new>

namespace {

std::atomic<long> allocations{0};

void* counted(std::size_t size) {
    ++allocations;
    if (void* p = std::malloc(size ? size : 1)) return p;
    throw std::bad_alloc();
}

}  // namespace

void* operator new(std::size_t size) { return counted(size); }
void* operator new[](std::size_t size) { return counted(size); }
void* operator new(std::size_t size, const std::nothrow_t&) noexcept {
    ++allocations;
    return std::malloc(size ? size : 1);
}
void* operator new[](std::size_t size, const std::nothrow_t& none) noexcept {
    return operator new(size, none);
}
void operator delete(void* p, const std::nothrow_t&) noexcept { std::free(p); }
void operator delete[](void* p, const std::nothrow_t&) noexcept { std::free(p); }
void operator delete(void* p) noexcept { std::free(p); }
void operator delete[](void* p) noexcept { std::free(p); }
void operator delete(void* p, std::size_t) noexcept { std::free(p); }
void operator delete[](void* p, std::size_t) noexcept { std::free(p); }

namespace toft::study {
namespace {

TEST(Allocation, IsCounted) {
    const long before = allocations;
    const std::vector<int> some(100, 1);
    EXPECT_EQ(some.size(), 100u);
    EXPECT_GT(allocations - before, 0);
}

RC_GTEST_PROP(Allocation, WorkingOutSilentlyAllocatesNothing, ()) {
    const support::Drawn drawn = *support::any_drawn();
    const site::Job job = support::job_of(drawn);
    const RunScheme scheme = support::scheme_of(drawn);
    const auto setting = support::prepared(job);
    Silent ledger;
    Figures<Silent> figures;
    const long before = allocations;
    work_out(ledger, setting, scheme, Stage::heat, figures);
    const long after = allocations;
    RC_ASSERT(figures.done == Stage::heat);
    RC_ASSERT(after - before == 0);
}

}  // namespace
}  // namespace toft::study
