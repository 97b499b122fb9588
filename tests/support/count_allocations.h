#pragma once
// Replaces the program's operator new by one that counts. To be included by one file of a test
// program.

#include <atomic>
#include <cstdlib>
#include <new>

namespace toft::support {

inline std::atomic<long> allocations{0};

inline void* counted(std::size_t size) {
    ++allocations;
    if (void* p = std::malloc(size ? size : 1)) return p;
    throw std::bad_alloc();
}

}  // namespace toft::support

void* operator new(std::size_t size) { return toft::support::counted(size); }
void* operator new[](std::size_t size) { return toft::support::counted(size); }
void* operator new(std::size_t size, const std::nothrow_t&) noexcept {
    ++toft::support::allocations;
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
