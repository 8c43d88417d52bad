#include "input/file_digest.h"

#include <catch2/catch.hpp>

using namespace glim;

// Digests published with the standard: FIPS 180-4, examples for SHA-256 (one and two blocks).
TEST_CASE("a digest is that of the standard", "[input]")
{
    CHECK(identity_of("abc").sha256 ==
          "ba7816bf8f01cfea414140de5dae2223b00361a396177a9cb410ff61f20015ad");
    CHECK(identity_of("abcdbcdecdefdefgefghfghighijhijkijkljklmklmnlmnomnopnopq").sha256 ==
          "248d6a61d20638b8e5c026930c3e6039a33ce45964ff2167f6ecedd419db06c1");
}

TEST_CASE("an empty file has an identity too", "[input]")
{
    CHECK(identity_of("").bytes == 0);
    CHECK(identity_of("").sha256 ==
          "e3b0c44298fc1c149afbf4c8996fb92427ae41e4649b934ca495991b7852b855");
}

TEST_CASE("bytes that end no text are part of the identity", "[input]")
{
    using namespace std::string_literals;
    CHECK(identity_of("a\0b"s).bytes == 3);
    CHECK(identity_of("a\0b"s).sha256 != identity_of("a"s).sha256);
}
