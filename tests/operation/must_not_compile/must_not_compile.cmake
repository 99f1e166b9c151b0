# SPDX-License-Identifier: MIT
# What must not compile is a test: only the types named in operation/declare/request_field.h may be request fields.
set(compile_field ${CMAKE_CXX_COMPILER} -std=c++20 -fsyntax-only -I${PROJECT_SOURCE_DIR}/lib
  ${CMAKE_CURRENT_LIST_DIR}/unsupported_field.cpp)
add_test(NAME "operation: a supported field type compiles" COMMAND ${compile_field} -DFIELD=int)
foreach(type float long unsigned char)
  add_test(NAME "operation: a field of type ${type} does not compile" COMMAND ${compile_field} -DFIELD=${type})
  set_tests_properties("operation: a field of type ${type} does not compile" PROPERTIES
    PASS_REGULAR_EXPRESSION "RequestField|constraints not satisfied")
endforeach()
