#pragma once
// What a smaller module goes without.

namespace toft::request {

/// Thrown by what the first module of the page leaves to the whole one; whoever asked is told by a
/// fault `elsewhere`.
struct Elsewhere {};

}  // namespace toft::request
