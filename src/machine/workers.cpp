#include "machine/workers.h"

#include "machine/flush_to_zero.h"

#include <algorithm>
#include <atomic>
#include <exception>
#include <mutex>
#include <thread>
#include <vector>

namespace glim {

namespace {

/// One run of for_each_index, shared by its threads.
struct Run {
    std::size_t count;
    const Workers& workers;
    const std::function<void(std::size_t, unsigned)>& work;
    std::atomic<std::size_t> next = 0;
    std::size_t done = 0;
    std::exception_ptr failure;
    std::mutex mutex;

    bool over() const { return workers.stop.stop_requested(); }

    void take_all(unsigned worker)
    {
        const FlushToZero flush;
        try {
            for (std::size_t i = next++; i < count && !over(); i = next++) {
                work(i, worker);
                tell_one_done();
            }
        } catch (...) {
            next = count;
            const std::lock_guard lock(mutex);
            if (!failure)
                failure = std::current_exception();
        }
    }

    void tell_one_done()
    {
        const std::lock_guard lock(mutex);
        ++done;
        if (workers.progress)
            workers.progress(done, count);
    }
};

} // namespace

unsigned Workers::count() const
{
    return threads != 0 ? threads : std::max(1U, std::thread::hardware_concurrency());
}

bool for_each_index(std::size_t count, const Workers& workers,
                    const std::function<void(std::size_t, unsigned)>& work)
{
    Run run{.count = count, .workers = workers, .work = work, .failure = {}, .mutex = {}};
    {
        std::vector<std::jthread> others;
        const std::size_t useful =
            std::min<std::size_t>(workers.count(), std::max<std::size_t>(count, 1));
        for (unsigned w = 1; w < useful; ++w)
            others.emplace_back([&run, w] { run.take_all(w); });
        run.take_all(0);
    }
    if (run.failure)
        std::rethrow_exception(run.failure);
    return run.done == count;
}

} // namespace glim
