#pragma once

#include <cstddef>
#include <functional>
#include <stop_token>

namespace glim {

/// How long work tells how far it is: pieces done, of how many. Called from one thread at a time.
using Progress = std::function<void(std::size_t done, std::size_t all)>;

/// How work is to be done; it never changes what comes out.
struct Workers {
    unsigned threads = 0; ///< 0: one a core
    std::stop_token stop;
    Progress progress; ///< may be empty

    unsigned count() const;
    /// The same for a part of the work that is too small to be told of.
    Workers silent() const { return {.threads = threads, .stop = stop, .progress = {}}; }
};

/// Calls `work(i, worker)` once for every i below `count`, in no promised order, on several
/// threads; `worker` < workers.count() says which of them. Each call writes to its own slot, and
/// sums are made afterwards in order: so the result is the same for any number of threads.
/// Floating point flushes denormals to zero while it works, in every thread, the caller's included.
/// Returns false if it was stopped before all were done. What `work` throws is thrown here.
bool for_each_index(std::size_t count, const Workers& workers,
                    const std::function<void(std::size_t i, unsigned worker)>& work);

} // namespace glim
