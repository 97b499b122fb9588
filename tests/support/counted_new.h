#pragma once
// Of a program that counted_new.cpp is linked into, operator new counts.

#include <atomic>

namespace toft::support {

extern std::atomic<long> allocations;

}  // namespace toft::support
