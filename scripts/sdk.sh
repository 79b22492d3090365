# Sourced by ./gudgeon and ./test: finds a .NET SDK that can build this project.

# Leaves the path of dotnet in $dotnet, or says in one line what is missing and ends with 127.
find_dotnet() {
    local place
    dotnet=$(command -v dotnet || true)
    for place in "${DOTNET_ROOT:-}" "${HOME:-}/.dotnet" /usr/share/dotnet /usr/lib/dotnet /usr/local/share/dotnet /opt/dotnet; do
        [ -n "$dotnet" ] || [ ! -x "$place/dotnet" ] || dotnet=$place/dotnet
    done
    if [ -z "$dotnet" ]; then
        echo "$1: the .NET SDK 10 or newer is needed and no dotnet was found; see https://dotnet.microsoft.com/download" >&2
        exit 127
    fi
}

# Ends with 127 and one line when the SDK found is older than 10.
require_sdk() {
    local version
    version=$(cd "$root" && "$dotnet" --version 2>/dev/null) || version=none
    case $version in
        [1-9][0-9].*) ;;
        *)
            echo "$1: the .NET SDK 10 or newer is needed; $dotnet has $version" >&2
            exit 127
            ;;
    esac
}

export DOTNET_CLI_TELEMETRY_OPTOUT=1 DOTNET_NOLOGO=1 DOTNET_CLI_UI_LANGUAGE=en
export DOTNET_CLI_HOME=${DOTNET_CLI_HOME:-${HOME:-$root/build}}
