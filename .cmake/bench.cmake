# What growers run, plus the benchmarks of tests/bench.
include(${CMAKE_CURRENT_LIST_DIR}/release.cmake)
set(STRIKEBOOK_BENCH ON CACHE BOOL "")
