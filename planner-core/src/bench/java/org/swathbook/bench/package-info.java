/** How fast the engine is: run with {@code mvn -Pbench -pl planner-core -am test}. */
@org.jspecify.annotations.NullMarked
package org.swathbook.bench;
