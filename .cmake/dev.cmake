# For the day's work: quick single-file rebuilds, optimised enough that the statistics are pleasant to use.
set(CMAKE_BUILD_TYPE RelWithDebInfo CACHE STRING "")
set(STRIKEBOOK_CCACHE ON CACHE BOOL "")
set(CMAKE_EXPORT_COMPILE_COMMANDS ON CACHE BOOL "")
