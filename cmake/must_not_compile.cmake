# Compiles SOURCE (syntax only). A file named control_* must be accepted; any other must be refused,
# and the compiler must say the text that the file promises in a line "// must say: TEXT".
cmake_path(GET SOURCE STEM stem)
execute_process(
  COMMAND ${CMAKE_COMMAND} -E env LC_ALL=C ${COMPILER} -std=c++20 -fsyntax-only -I${INCLUDE} ${SOURCE}
  RESULT_VARIABLE failed OUTPUT_VARIABLE said ERROR_VARIABLE said)

if(stem MATCHES "^control_")
  if(failed)
    message(FATAL_ERROR "${stem} must compile, but:\n${said}")
  endif()
  return()
endif()

file(STRINGS ${SOURCE} promise REGEX "^// must say: " LIMIT_COUNT 1)
string(REGEX REPLACE "^// must say: " "" promise "${promise}")
if(promise STREQUAL "")
  message(FATAL_ERROR "${stem} has no line '// must say: TEXT'")
endif()
if(NOT failed)
  message(FATAL_ERROR "${stem} compiled, but must be refused")
endif()
string(FIND "${said}" "${promise}" found)
if(found EQUAL -1)
  message(FATAL_ERROR "${stem} was refused, but not with '${promise}':\n${said}")
endif()
