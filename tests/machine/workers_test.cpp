#include "machine/workers.h"

#include <catch2/catch.hpp>

#include <atomic>
#include <stdexcept>
#include <vector>

using namespace glim;

TEST_CASE("every index is worked on once, with any number of threads", "[machine]")
{
    const unsigned threads = GENERATE(0U, 1U, 2U, 7U);
    const Workers workers{.threads = threads, .stop = {}, .progress = {}};
    std::vector<int> visits(1000, 0);
    const bool all = for_each_index(visits.size(), workers, [&](std::size_t i, unsigned worker) {
        if (worker < workers.count())
            ++visits[i];
    });
    CHECK(all);
    CHECK(visits == std::vector<int>(1000, 1));
}

TEST_CASE("no work is done at once", "[machine]")
{
    CHECK(for_each_index(0, {}, [](std::size_t, unsigned) { throw std::logic_error("called"); }));
}

TEST_CASE("work that is stopped says that it is not all done", "[machine]")
{
    std::stop_source source;
    const Workers workers{.threads = 2, .stop = source.get_token(), .progress = {}};
    std::atomic<int> calls = 0;
    const bool all = for_each_index(100'000, workers, [&](std::size_t, unsigned) {
        if (++calls == 10)
            source.request_stop();
    });
    CHECK_FALSE(all);
    CHECK(calls < 100'000);
}

TEST_CASE("a stop asked for in the last piece changes nothing", "[machine]")
{
    std::stop_source source;
    const Workers workers{.threads = 1, .stop = source.get_token(), .progress = {}};
    CHECK(for_each_index(5, workers, [&](std::size_t i, unsigned) {
        if (i == 4)
            source.request_stop();
    }));
}

TEST_CASE("what a piece of work throws is thrown to the caller", "[machine]")
{
    const Workers workers{.threads = 3, .stop = {}, .progress = {}};
    CHECK_THROWS_WITH(for_each_index(100, workers,
                                     [](std::size_t i, unsigned) {
                                         if (i == 17)
                                             throw std::runtime_error("piece 17");
                                     }),
                      "piece 17");
}

TEST_CASE("progress counts up to all, one at a time", "[machine]")
{
    std::vector<std::size_t> told;
    const Workers workers{
        .threads = 4, .stop = {}, .progress = [&](std::size_t done, std::size_t all) {
            told.push_back(all == 50 ? done : 0);
        }};
    for_each_index(50, workers, [](std::size_t, unsigned) {});
    REQUIRE(told.size() == 50);
    for (std::size_t i = 0; i < told.size(); ++i)
        CHECK(told[i] == i + 1);
}

TEST_CASE("silent workers are the same, and tell nobody how far they are", "[machine]")
{
    std::stop_source source;
    source.request_stop();
    const Workers loud{
        .threads = 3, .stop = source.get_token(), .progress = [](std::size_t, std::size_t) {
            throw std::logic_error("told");
        }};
    const Workers silent = loud.silent();
    CHECK(silent.count() == 3);
    CHECK(silent.stop.stop_requested());
    CHECK(!silent.progress);
}
