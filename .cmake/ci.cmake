# What tests/run builds: assertions on, warnings are errors. -O1 because the exact tests enumerate.
set(CMAKE_BUILD_TYPE Debug CACHE STRING "")
set(CMAKE_CXX_FLAGS_DEBUG "-O1 -g1" CACHE STRING "")
set(CMAKE_UNITY_BUILD ON CACHE BOOL "")
set(CMAKE_UNITY_BUILD_BATCH_SIZE 8 CACHE STRING "")
set(STRIKEBOOK_CCACHE ON CACHE BOOL "")
set(STRIKEBOOK_WARNINGS_AS_ERRORS ON CACHE BOOL "")
