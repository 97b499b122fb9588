#pragma once
// The test program's operator new counts (counted_new.cpp).

#include <atomic>

namespace toft::rules {

extern std::atomic<long> allocations;

}  // namespace toft::rules
