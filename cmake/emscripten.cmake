# Toolchain file: Debian's em++, without emcmake, whose search rules hide header-only libraries.
set(CMAKE_SYSTEM_NAME Generic)
set(CMAKE_SYSTEM_PROCESSOR wasm32)
set(CMAKE_CXX_COMPILER em++)
set(CMAKE_AR emar CACHE FILEPATH "")
set(CMAKE_RANLIB emranlib CACHE FILEPATH "")
set(CMAKE_TRY_COMPILE_TARGET_TYPE STATIC_LIBRARY)
set(EMSCRIPTEN ON)
