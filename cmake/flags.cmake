# toft_flags: what every target of ours is compiled and linked with.
add_library(toft_flags INTERFACE)
target_include_directories(toft_flags INTERFACE ${CMAKE_CURRENT_SOURCE_DIR}/src)
# Text must not hang on the machine's locale (and em++ pays dearly for <locale>).
target_compile_definitions(toft_flags INTERFACE FMT_STATIC_THOUSANDS_SEPARATOR=',')
# Nothing is written as float, long double or 128 bits.
target_compile_definitions(toft_flags INTERFACE
  FMT_USE_FLOAT=0 FMT_USE_LONG_DOUBLE=0 $<$<BOOL:${EMSCRIPTEN}>:FMT_USE_INT128=0>)
# -ffp-contract=off: a fused multiply-add would make answers depend on the processor.
target_compile_options(toft_flags INTERFACE
  -ffp-contract=off -Wall -Wextra -Wpedantic -Wshadow -Wconversion -Wno-sign-conversion)
if(CMAKE_CXX_COMPILER_ID STREQUAL "GNU")
  # g++ 12 warns falsely of "text" + std::string.
  target_compile_options(toft_flags INTERFACE -Wno-restrict -Wno-maybe-uninitialized)
endif()
if(TOFT_WERROR)
  target_compile_options(toft_flags INTERFACE -Werror)
endif()
if(TOFT_SANITIZE)
  target_compile_options(toft_flags INTERFACE
    -fsanitize=${TOFT_SANITIZE} -fno-sanitize-recover=all -fno-omit-frame-pointer)
  if(TOFT_SANITIZE_LESS)
    target_compile_options(toft_flags INTERFACE -fno-sanitize=${TOFT_SANITIZE_LESS})
  endif()
  target_link_options(toft_flags INTERFACE -fsanitize=${TOFT_SANITIZE})
endif()

if(TOFT_LTO AND CMAKE_BUILD_TYPE STREQUAL "Release")
  include(CheckIPOSupported)
  check_ipo_supported(RESULT toft_lto_works LANGUAGES CXX)
  set(CMAKE_INTERPROCEDURAL_OPTIMIZATION ${toft_lto_works})
endif()

if(EMSCRIPTEN)
  # em++ must not see /usr/include itself: the host's C headers live there.
  set(headers ${CMAKE_BINARY_DIR}/headers)
  file(MAKE_DIRECTORY ${headers})
  foreach(folder fmt nlohmann tl)
    file(CREATE_LINK /usr/include/${folder} ${headers}/${folder} SYMBOLIC)
  endforeach()
  file(CREATE_LINK /usr/include/eigen3/Eigen ${headers}/Eigen SYMBOLIC)
  target_include_directories(toft_flags SYSTEM INTERFACE ${headers})
  target_compile_options(toft_flags INTERFACE -fno-exceptions)
  target_link_options(toft_flags INTERFACE -fwasm-exceptions)
endif()

add_library(toft_fmt STATIC cmake/fmt_library.cpp)
target_link_libraries(toft_fmt PRIVATE toft_flags)
