# ci, under AddressSanitizer and UndefinedBehaviorSanitizer; the first fault ends the run. Instrumented, std::regex sets off a warning of GCC 12
# about uninitialised members that are never read.
include(${CMAKE_CURRENT_LIST_DIR}/ci.cmake)
set(CMAKE_CXX_FLAGS "-fsanitize=address,undefined -fno-sanitize-recover=all -fno-omit-frame-pointer -Wno-maybe-uninitialized" CACHE STRING "")
set(CMAKE_EXE_LINKER_FLAGS "-fsanitize=address,undefined" CACHE STRING "")
