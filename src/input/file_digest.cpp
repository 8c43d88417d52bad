#include "input/file_digest.h"

#include <nettle/sha2.h>

namespace glim {

FileIdentity identity_of(std::string_view bytes)
{
    sha256_ctx context{};
    sha256_init(&context);
    sha256_update(&context, bytes.size(), reinterpret_cast<const std::uint8_t*>(bytes.data()));
    std::array<std::uint8_t, SHA256_DIGEST_SIZE> digest{};
    sha256_digest(&context, digest.size(), digest.data());

    constexpr std::string_view digits = "0123456789abcdef";
    FileIdentity identity{bytes.size(), {}};
    for (const std::uint8_t byte : digest) {
        identity.sha256 += digits[byte >> 4U];
        identity.sha256 += digits[byte & 0xFU];
    }
    return identity;
}

} // namespace glim
